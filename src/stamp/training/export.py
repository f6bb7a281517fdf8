"""Checkpoints → ONNX with 32-bit weights. pack.py makes them small.

usage: python3 export.py CHECKPOINTS OUT      (recogniser.pt and finder.pt → recogniser-32.onnx and finder-32.onnx)
"""

import pathlib
import sys

import torch

from nets import Finder, Recogniser

OPSET = 16


def averaged(net, path):
    net.load_state_dict(torch.load(path, map_location="cpu")["average"])
    return net.eval()


def export(folder, out):
    line, photo = torch.zeros(1, 1, 48, 160), torch.zeros(1, 1, 192, 256)
    common = {"opset_version": OPSET}
    if int(torch.__version__.split(".")[0]) >= 2:
        common["dynamo"] = False
    torch.onnx.export(
        averaged(Recogniser(), folder / "recogniser.pt"),
        line,
        str(out / "recogniser-32.onnx"),
        input_names=["line"],
        output_names=["logits"],
        dynamic_axes={"line": {0: "lines", 3: "width"}, "logits": {0: "lines", 1: "steps"}},
        **common,
    )
    torch.onnx.export(
        averaged(Finder(), folder / "finder.pt"),
        photo,
        str(out / "finder-32.onnx"),
        input_names=["photo"],
        output_names=["map"],
        dynamic_axes={"photo": {2: "height", 3: "width"}, "map": {2: "rows", 3: "columns"}},
        **common,
    )


if __name__ == "__main__":
    export(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
