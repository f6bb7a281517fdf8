"""Trains the finder on photographs rendered as it goes; a checkpoint lets a later run go on.

usage: python3 train_finder.py --atlas A.npz --held H.npz --out FOLDER [--resume FOLDER] --seconds N --span 0 0.4 --seed 2

Its shape is that of train_recogniser.py: each reads whole by itself how one net is trained, and what both do stands in
keep.py, schedule.py and several.py.
"""

import argparse
import pathlib
import time

import numpy as np
import torch
import torch.nn.functional as F
from torch.utils.data import DataLoader

import keep
import photos
from boxes import boxes_of
from nets import Average, Finder
from schedule import FUSED, Clock, set_rate, step_unless_broken
from several import Team


def arguments():
    parser = argparse.ArgumentParser()
    for name in ("atlas", "held", "out"):
        parser.add_argument("--" + name, required=True)
    parser.add_argument("--resume")
    parser.add_argument("--seconds", type=float, default=400)
    parser.add_argument("--span", type=float, nargs=2, default=(0, 1), help="part of the whole schedule this run covers")
    parser.add_argument("--seed", type=int, default=2)
    parser.add_argument("--batch", type=int, default=24)
    parser.add_argument("--joined", type=int, default=4, help="batches learnt from in one step")
    parser.add_argument("--side", type=int, default=640)
    parser.add_argument("--keep-every", type=float, default=120, help="seconds between checkpoints")
    parser.add_argument("--workers", type=int, default=7)
    parser.add_argument("--peak", type=float, default=2.5e-3, help="highest learning rate")
    parser.add_argument("--again", type=int, default=1, help="steps on stored batches after each new one")
    parser.add_argument("--checks", type=int, default=16, help="validation batches of 16 photos")
    return parser.parse_args()


def loss_of(answer, wanted, weights):
    """Core: cross entropy and overlap. Code, sides and angle: only inside cores."""
    core, inside = wanted[:, 0], wanted[:, 0] * weights[:, 0]
    area = inside.sum() + 1
    each = F.binary_cross_entropy_with_logits(answer[:, 0], core, reduction="none") * weights[:, 0]
    # The likeliest mistaken of the empty cells, three for each cell of a line; all by masks, so that nothing waits.
    empty = torch.sort(torch.where(core < 0.5, each, torch.zeros_like(each)).flatten(), descending=True).values
    most = 3 * area + 2000
    hardest = (empty * (torch.arange(len(empty), device=empty.device) < most)).sum() / most
    found = torch.sigmoid(answer[:, 0]) * weights[:, 0]
    axes = (1, 2)
    overlap = 1 - (2 * (found * core).sum(axes) + 20) / (found.sum(axes) + (core * weights[:, 0]).sum(axes) + 20)
    text = (each * inside).sum() / area + hardest + overlap.mean()
    # Every line counts alike whatever its size would be ideal; the square root of the area is close and cheap.
    judged = inside * weights[:, 1]
    code = F.binary_cross_entropy_with_logits(answer[:, 1], wanted[:, 1], reduction="none")
    code = (code * judged).sum() / (judged.sum() + 1)
    sides = F.smooth_l1_loss(answer[:, 2:6], wanted[:, 2:6], reduction="none", beta=0.1)
    # The ends are judged where they are near: far cells cannot see them.
    reach = torch.exp(-torch.exp(wanted[:, 4:6].clamp(-6, 6)) / torch.exp(wanted[:, 2:4].clamp(-6, 6)).sum(1, keepdim=True))
    sides = ((sides[:, :2].sum(1) + (sides[:, 2:] * (0.1 + reach)).sum(1)) * inside).sum() / area
    turn = (((answer[:, 6:] - wanted[:, 6:]) ** 2).sum(1) * inside).sum() / area
    return text + 0.5 * code + sides + 4 * turn


def learn(net, optimiser, average, team, images, wanted, weights):
    """One step on one batch of each process."""
    with torch.autocast(images.device.type, torch.bfloat16, enabled=images.is_cuda):
        answer = net(images)
    loss = loss_of(answer.float(), wanted, weights)
    optimiser.zero_grad(set_to_none=True)
    loss.backward()
    team.mean(net)
    norm = torch.nn.utils.clip_grad_norm_(net.parameters(), 4.0)
    step_unless_broken(optimiser, norm)
    average.update(net)
    return loss.detach()


def moved(images, wanted, weights):
    """A seen batch made a little different: rolled by whole cells, noisier, at times inverted."""
    down, right = (int(v) for v in torch.randint(0, 20, (2,)))
    images = torch.roll(images, (32 * down, 32 * right), (2, 3))
    sign = torch.where(torch.rand(len(images), 1, 1, 1, device=images.device) < 0.15, -1.0, 1.0)
    images = sign * images + torch.rand_like(sign) ** 3 * 0.3 * torch.randn_like(images)
    shift = ((8 * down, 8 * right), (2, 3))
    return torch.clamp(images, -4, 4), torch.roll(wanted, *shift), torch.roll(weights, *shift)


def from_all_sides(images, wanted, weights, parts=8):
    """Half of a batch turned by a quarter, a half or three quarters: photos lie as the camera was held."""
    pieces = zip(*(part.chunk(parts) for part in (images, wanted, weights)))
    turns = [int(torch.randint(1, 4, (1,))) if torch.rand(1) < 0.5 else 0 for _ in range(parts)]
    made = [photos.turned(*piece, turn) for piece, turn in zip(pieces, turns)]
    return tuple(torch.cat(part) for part in zip(*made))


def load(args, net, device):
    average = Average(net, 0.999)
    optimiser = torch.optim.AdamW(net.parameters(), lr=args.peak, weight_decay=0.02, **FUSED)
    step = 0
    if args.resume and (pathlib.Path(args.resume) / "finder.pt").exists():
        saved = keep.whole(torch.load(pathlib.Path(args.resume) / "finder.pt", map_location=device))
        net.load_state_dict(saved["net"])
        average.state.update({k: v.to(device) for k, v in saved["average"].items()})
        if "optimiser" in saved:
            optimiser.load_state_dict(saved["optimiser"])
        step = average.step = saved["step"]
    return average, optimiser, step


def save(args, net, average, optimiser, step):
    saved = {"net": net.state_dict(), "average": average.state, "optimiser": optimiser.state_dict(), "step": step}
    path = pathlib.Path(args.out) / "finder.pt"
    torch.save(saved, path.with_suffix(".part"))
    path.with_suffix(".part").rename(path)  # whoever takes a copy meanwhile gets a whole file


def together(loader, device, count):
    """Joins batches: a step's cost is the launching of its kernels, not their size."""
    parts = []
    for batch in loader:
        parts.append({k: v.to(device, non_blocking=True) if torch.is_tensor(v) else v for k, v in batch.items()})
        if len(parts) == count:
            joined = {k: torch.cat([part[k] for part in parts]) for k in ("wanted", "weights", "sizes")}
            yield {**joined, "layers": torch.cat([part["layers"] for part in parts], 1), "seed": batch["seed"]}
            parts = []


def train(args, device):
    team = Team(device)
    torch.manual_seed(args.seed)
    torch.backends.cudnn.benchmark = True  # one shape only
    net = Finder().to(device, memory_format=torch.channels_last)
    average, optimiser, step = load(args, net, device)
    torch.manual_seed(args.seed + team.rank)
    source = photos.Photos(args.atlas, args.seed * 64 + team.rank, args.batch, args.side)
    loader = DataLoader(source, None, num_workers=args.workers, prefetch_factor=2, pin_memory=device == "cuda")
    start, first, last, kept, waited, seen = time.time(), step, time.time(), time.time(), 0.0, 0
    net.train()
    store, rng, mark = [], np.random.default_rng(args.seed + team.rank), step
    stream = together(loader, device, args.joined)
    while True:
        before = time.time()
        batch = next(stream)
        waited += time.time() - before
        spent = team.first((time.time() - start) / args.seconds)
        if spent >= 1:
            break
        set_rate(optimiser, args, spent, step - first)
        timed = team.rank == 0 and time.time() - last > 30
        clock = Clock(timed and device == "cuda")
        with torch.no_grad():
            images = photos.shoot(batch, device)
        lit, seen = clock.split(), seen + len(images)
        fresh = from_all_sides(images, batch["wanted"], batch["weights"])
        loss = learn(net, optimiser, average, team, *fresh)
        learnt = clock.split()
        step += 1
        for _ in range(args.again if store else 0):
            old = [part.float() for part in store[rng.integers(len(store))]]
            learn(net, optimiser, average, team, *moved(*from_all_sides(*old)))
            step += 1
        stored = [part.half() for part in fresh]
        if len(store) < 40:
            store.append(stored)
        else:
            store[rng.integers(40)] = stored
        if timed:
            pace, mark, last = (step - mark) / (time.time() - last), step, time.time()
            times = f"lit in {lit:.0f} ms, learnt in {learnt:.0f} ms"
            print(f"finder step {step} loss {loss.item():.3f} {pace:.1f} steps/s, waited {waited:.0f} s, {times}", flush=True)
        if team.rank == 0 and time.time() - kept > args.keep_every:
            save(args, net, average, optimiser, step)
            kept = time.time()
    if team.rank > 0:
        return None
    save(args, net, average, optimiser, step)
    print(f"finder: {step} steps, {seen * team.size} new photos in {time.time() - start:.0f} s", flush=True)
    net.load_state_dict(average.state)
    return net.eval()


def turned_lines(lines, quarters, side):
    """Corners of lines on a square photo turned left by quarters; they stay in reading order."""
    for _ in range(quarters):
        lines = [(text, np.stack((quad[:, 1], side - 1 - quad[:, 0]), 1), kind) for text, quad, kind in lines]
    return lines


def matches(box, quad):
    """Whether a found box frames a line well enough to be read: middle, height, ends and angle."""
    centre, wide, tall, angle = photos.box_of(quad)
    off = np.array(box[:2]) - centre
    own = (off[0] * np.cos(angle) + off[1] * np.sin(angle), -off[0] * np.sin(angle) + off[1] * np.cos(angle))
    ends = (abs(own[0] - box[2] / 2 + wide / 2), abs(own[0] + box[2] / 2 - wide / 2))
    return abs(own[1]) < 0.3 * tall and 0.7 < box[3] / tall < 1.4 and max(ends) < 0.55 * tall and abs((box[4] - angle + np.pi) % (2 * np.pi) - np.pi) < 0.15


@torch.no_grad()
def evaluate(net, atlas, device, batches, quarters=0, seed=900002):
    """Recall of codes and of other text, how well the code score parts them, and false boxes a photo; turned or not."""
    source = iter(photos.Photos(atlas, seed, 16))
    hit, scores, extra, seen = {-1: [0, 0], 0: [0, 0], 1: [0, 0]}, [], 0, 0
    for _ in range(batches):
        batch = next(source)
        images = torch.rot90(photos.shoot(batch, device), quarters, (2, 3))
        answers = net(images).float().cpu().numpy()
        for answer, lines in zip(answers, batch["lines"]):
            found = boxes_of(answer)
            lines = turned_lines(lines, quarters, images.shape[3])
            seen += 1
            used = set()
            for _, quad, kind in lines:
                good = [i for i, box in enumerate(found) if matches(box, quad)]
                hit[kind][0] += bool(good)
                hit[kind][1] += 1
                used.update(good)
                scores += [(found[i][6], kind) for i in good]
            extra += len(found) - len(used)
    scores = [(s, k) for s, k in scores if k >= 0]
    right = np.mean([(s > 0.5) == (k == 1) for s, k in scores]) if scores else 0
    parts = {("other text", "codes", "mixed")[k]: f"{a / max(1, b):.3f} of {b}" for k, (a, b) in hit.items()}
    return {**parts, "class right": f"{right:.3f}", "other boxes a photo": f"{extra / max(1, seen):.3f}"}


if __name__ == "__main__":
    options = arguments()
    where = "cuda" if torch.cuda.is_available() else "cpu"
    trained = train(options, where)
    if trained is not None:
        for quarters in range(4):
            found = evaluate(trained, options.held, where, options.checks, quarters)
            print(f"finder, fonts held back, turned by {90 * quarters}", found, flush=True)
