"""Where the time goes on the accelerator: lighting, photographing, learning. usage: python3 bench.py ATLAS.npz"""

import sys
import time

import numpy as np
import torch

import codes
import crops
import photos
import train_finder
import train_recogniser
from atlas import load
from line import Setter
from nets import Average, Finder, Recogniser
from several import Team

device = "cuda" if torch.cuda.is_available() else "cpu"
wait = torch.cuda.synchronize if device == "cuda" else lambda: None
big = device == "cuda"


def timed(name, run, times=8):
    run()
    run()
    wait()
    start = time.time()
    for _ in range(times):
        run()
    wait()
    print(f"{name}: {(time.time() - start) / times * 1000:.1f} ms", flush=True)


def table(name, run):
    with torch.profiler.profile() as profile:
        run()
        wait()
    order = "self_cuda_time_total" if big else "self_cpu_time_total"
    table = profile.key_averages().table(sort_by=order, row_limit=14, max_name_column_width=45)
    print(name, table.split("\n", 1)[1][:2600])


setter, rng = Setter(*load(sys.argv[1])), np.random.default_rng(1)
lines = crops.Lines("", 1, 256 if big else 8)
group = [(t, *crops.strip_for(rng, setter, t), False) for t in (codes.layout_code(rng)[:7] for _ in range(lines.batch))]
batch = lines.compose(rng, setter, group)
shots = photos.Photos("", 1, 24 if big else 2).batch_of(rng, setter)
print("width", batch["width"])
with torch.no_grad():
    timed("lines lit", lambda: crops.shoot(batch, device))
    timed("photos lit", lambda: photos.shoot(shots, device))
    image, photo = crops.shoot(batch, device)[0], photos.shoot(shots, device)
for layout in (torch.channels_last, torch.contiguous_format):
    for fast in (False, True):
        torch.backends.cudnn.benchmark = fast
        net = Recogniser().to(device, memory_format=layout)
        tools = (net, torch.optim.AdamW(net.parameters()), Average(net), Team(device))
        timed(f"recogniser learns {layout} {fast}", lambda: train_recogniser.learn(*tools, image, batch["texts"]))
        net2 = Finder().to(device, memory_format=layout)
        tools2 = (net2, torch.optim.AdamW(net2.parameters()), Average(net2), Team(device))
        wanted, weights = shots["wanted"].to(device), shots["weights"].to(device)
        timed(f"finder learns {layout} {fast}", lambda: train_finder.learn(*tools2, photo, wanted, weights))
table("lines lit", lambda: crops.shoot(batch, device))
table("photos lit", lambda: photos.shoot(shots, device))
table("recogniser", lambda: train_recogniser.learn(*tools, image, batch["texts"]))
table("finder", lambda: train_finder.learn(*tools2, photo, wanted, weights))
