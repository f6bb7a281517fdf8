"""Trains the recogniser on lines rendered as it goes; a checkpoint lets a later run go on.

usage: python3 train_recogniser.py --atlas A.npz --held H.npz --out FOLDER [--resume FOLDER] --seconds N --span 0 0.4 --seed 1

Its shape is that of train_finder.py: each reads whole by itself how one net is trained, and what both do stands in
keep.py, schedule.py and several.py.
"""

import argparse
import pathlib
import time

import numpy as np
import torch
import torch.nn.functional as F
from torch.utils.data import DataLoader

import crops
import keep
from lattice import encode, exact_by_kind
from nets import ALPHABET, Average, Recogniser
from rounding import Rounded, rounded
from schedule import FUSED, Clock, set_rate, step_unless_broken
from several import Team


def arguments():
    parser = argparse.ArgumentParser()
    for name in ("atlas", "held", "out"):
        parser.add_argument("--" + name, required=True)
    parser.add_argument("--resume")
    parser.add_argument("--seconds", type=float, default=400)
    parser.add_argument("--span", type=float, nargs=2, default=(0, 1), help="part of the whole schedule this run covers")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--batch", type=int, default=256)
    parser.add_argument("--joined", type=int, default=2048, help="lines of 208 pixels lit at once")
    parser.add_argument("--parts", type=int, default=2, help="steps made of the lines lit at once")
    parser.add_argument("--rounds-from", type=float, default=0.6, help="part of the schedule from which weights are rounded as in the file")
    parser.add_argument("--keep-every", type=float, default=120, help="seconds between checkpoints")
    parser.add_argument("--workers", type=int, default=7)
    parser.add_argument("--peak", type=float, default=2.5e-3, help="highest learning rate")
    parser.add_argument("--again", type=int, default=1, help="steps on stored batches after each new one")
    parser.add_argument("--teacher", help="folder of the net whose reading is held on to wherever no sign stands")
    parser.add_argument("--held-on", type=float, default=1.0, help="weight of that")
    parser.add_argument("--still", action="store_true", help="the normalisations' means and deviations stay as they are")
    parser.add_argument("--next-to", type=float, default=0.1, help="share of a line's ends with another text past a gap")
    parser.add_argument("--checks", type=int, default=16, help="validation batches of 128 lines")
    return parser.parse_args()


class Teacher:
    """The net that went before, as its file reads: what it reads of lines without signs shall still be read."""

    def __init__(self, folder, device):
        saved = keep.whole(torch.load(pathlib.Path(folder) / "recogniser.pt", map_location=device))["average"]
        self.net = Recogniser(classes=len(saved["head.bias"])).to(device, memory_format=torch.channels_last)
        self.net.load_state_dict(saved)
        self.net.eval().requires_grad_(False)
        with torch.no_grad():
            for weight in self.net.parameters():
                weight.copy_(rounded(weight))

    @torch.no_grad()
    def shares(self, images):
        with torch.autocast(images.device.type, torch.bfloat16, enabled=images.is_cuda):
            return F.softmax(self.net(images).float(), dim=2)


def strayed(logits, shares, texts, known):
    """How far each line's reading is from the teacher's (Kullback and Leibler), for a line's length; 0 where it knows not."""
    scores = F.log_softmax(logits.float(), dim=2)[:, :, : shares.shape[2]]
    each = (shares * (torch.log(shares.clamp(min=1e-8)) - scores)).sum((1, 2))
    weights = torch.tensor([k / (len(t) + 1) for k, t in zip(known, texts)], dtype=torch.float32)
    return (each * weights.to(logits.device, non_blocking=True)).mean()


def loss_of(logits, side, texts, device):
    labels, lengths = encode(texts, device)
    share = 1 / (lengths + 1).to(device, non_blocking=True)
    inputs = torch.full((len(texts),), logits.shape[1], dtype=torch.long)  # lengths stay here: nothing waits for them
    total = 0
    for part, weight in ((logits, 1.0), (side, 0.3)):
        scores = F.log_softmax(part.float(), dim=2).transpose(0, 1)
        each = F.ctc_loss(scores, labels, inputs, lengths, reduction="none", zero_infinity=True) * share
        # A line nobody could read must not outweigh the readable ones: beyond 2 the loss grows as a root.
        each = torch.where(each < 2, each, 2 * torch.sqrt(2 * torch.clamp(each, min=2)) - 2)
        total = total + weight * each.mean()
    return total


def learn(net, optimiser, average, team, images, texts, rounding=False, known=(), teacher=None, held_on=1.0):
    """One step on one batch of each process."""
    with Rounded(net, rounding):
        with torch.autocast(images.device.type, torch.bfloat16, enabled=images.is_cuda):
            logits, side = net(images)
        loss = loss_of(logits, side, texts, images.device)
        if teacher is not None:
            loss = loss + held_on * strayed(logits, teacher.shares(images), texts, known)
        optimiser.zero_grad(set_to_none=True)
        loss.backward()
    team.mean(net)
    norm = torch.nn.utils.clip_grad_norm_(net.parameters(), 2.0)
    step_unless_broken(optimiser, norm)
    average.update(net)
    return loss.detach()


def disturbed(images):
    """A seen batch made a little different: shifted, noisier, at times inverted."""
    count = len(images)
    level = torch.rand(count, 1, 1, 1, device=images.device) ** 3 * 0.4
    sign = torch.where(torch.rand(count, 1, 1, 1, device=images.device) < 0.15, -1.0, 1.0)
    moved = torch.roll(images, (int(torch.randint(-2, 3, (1,))), int(torch.randint(-3, 4, (1,)))), (2, 3))
    return torch.clamp(sign * moved + level * torch.randn_like(moved), -4, 4)


def load(args, net, device):
    average, optimiser = Average(net), torch.optim.AdamW(net.parameters(), lr=args.peak, weight_decay=0.02, betas=(0.9, 0.98), **FUSED)
    step = 0
    if args.resume:
        folder = pathlib.Path(args.resume)
        saved = keep.widened(keep.whole(torch.load(folder / "recogniser.pt", map_location=device)), len(ALPHABET) + 1)
        average.state.update({k: v.to(device) for k, v in saved["average"].items()})
        net.load_state_dict(saved["net"])
        step = average.step = saved["step"]
        if (folder / "recogniser-net.pt").exists():
            net.load_state_dict(torch.load(folder / "recogniser-net.pt", map_location=device))
            optimiser.load_state_dict(keep.opened(torch.load(folder / "recogniser-optimiser.pt", map_location=device)))
    return average, optimiser, step


def save(args, net, average, optimiser, step):
    """Three files, so that each stays small enough to travel: what ships, the net as it stood, its optimiser."""
    parts = {"": {"average": average.state, "step": step}, "-net": net.state_dict(), "-optimiser": keep.short(optimiser.state_dict())}
    for name, part in parts.items():
        path = pathlib.Path(args.out) / f"recogniser{name}.pt"
        torch.save(part, path.with_suffix(".part"))
        path.with_suffix(".part").rename(path)  # whoever takes a copy meanwhile gets a whole file


def together(loader, device, joined):
    """Joins batches of one width, as many as have the pixels of `joined` lines of 208: all steps cost about the same."""
    waiting = {}
    for batch in loader:
        parts = waiting.setdefault(batch["width"], [])
        batch["layers"] = batch["layers"].to(device, non_blocking=True)
        parts.append(batch)
        wanted = joined * 208 // (len(batch["texts"]) * batch["width"])
        if len(parts) >= min(joined // 128, max(1, wanted)):
            texts = [text for part in parts for text in part["texts"]]
            known = [one for part in parts for one in part["known"]]
            yield {**batch, "layers": torch.cat([part["layers"] for part in parts], 1), "texts": texts, "known": known}
            parts.clear()


def parts(args, images, texts, known):
    """What was lit at once as batches of one step each: every width comes in a whole number of them."""
    size = -(-len(images) // args.parts)
    return [(images[i : i + size], texts[i : i + size], known[i : i + size]) for i in range(0, len(images), size)]


def train(args, device):
    team = Team(device)
    torch.manual_seed(args.seed)
    net = Recogniser().to(device, memory_format=torch.channels_last)
    average, optimiser, step = load(args, net, device)
    torch.manual_seed(args.seed + team.rank)
    teacher = Teacher(args.teacher, device) if args.teacher else None
    lines = crops.Lines(args.atlas, args.seed * 64 + team.rank, args.batch, pool=6, next_to=args.next_to)
    loader = DataLoader(lines, None, num_workers=args.workers, prefetch_factor=4, pin_memory=device == "cuda")
    start, first, last, kept, waited, seen = time.time(), step, time.time(), time.time(), 0.0, 0
    net.train()
    for part in net.modules() if args.still else ():
        if isinstance(part, torch.nn.BatchNorm2d):
            part.eval()
    store, rng, mark = [], np.random.default_rng(args.seed + team.rank), step
    source = together(loader, device, args.joined)
    while True:
        before = time.time()
        batch = next(source)
        waited += time.time() - before
        spent = team.first((time.time() - start) / args.seconds)
        if spent >= 1:
            break
        set_rate(optimiser, args, spent, step - first)
        timed = team.rank == 0 and time.time() - last > 30
        clock = Clock(timed and device == "cuda")
        with torch.no_grad():
            images, _ = crops.shoot(batch, device)
        lit, seen = clock.split(), seen + len(images)
        rounding = args.span[0] + (args.span[1] - args.span[0]) * spent > args.rounds_from
        for part, texts, known in parts(args, images, batch["texts"], batch["known"]):
            loss = learn(net, optimiser, average, team, part, texts, rounding, known, teacher, args.held_on)
            step += 1
        learnt = clock.split()
        # Lighting a scene costs as much as learning from it: each is learnt again before it is let go.
        for _ in range(args.again):
            old, texts, known = store[rng.integers(len(store))] if store else (images, batch["texts"], batch["known"])
            for part, said, knows in parts(args, disturbed(old.float()), texts, known):
                learn(net, optimiser, average, team, part, said, rounding, knows, teacher, args.held_on)
                step += 1
        stored = (images.half(), batch["texts"], batch["known"])
        if len(store) < 80:
            store.append(stored)
        else:
            store[rng.integers(80)] = stored
        if timed:
            pace, mark, last = (step - mark) / (time.time() - last), step, time.time()
            times = f"lit in {lit:.0f} ms, learnt in {learnt:.0f} ms, {len(images)} of width {batch['width']}"
            print(f"recogniser step {step} loss {loss.item():.3f} {pace:.1f} steps/s, waited {waited:.0f} s, {times}", flush=True)
        if team.rank == 0 and time.time() - kept > args.keep_every:
            save(args, net, average, optimiser, step)
            kept = time.time()
    if team.rank > 0:
        return None
    save(args, net, average, optimiser, step)
    print(f"recogniser: {step} steps, {seen * team.size} new lines in {time.time() - start:.0f} s", flush=True)
    net.load_state_dict(average.state)
    with torch.no_grad():
        for weight in net.parameters():
            weight.copy_(rounded(weight))
    return net


if __name__ == "__main__":
    options = arguments()
    where = "cuda" if torch.cuda.is_available() else "cpu"
    trained = train(options, where)
    checked = ((options.atlas, "fonts of training"), (options.held, "fonts held back")) if trained is not None else ()
    for path, name in checked:
        print(name, exact_by_kind(trained.eval(), path, where, options.checks), flush=True)
    assert len(ALPHABET) == 41
