"""Weights of an ONNX net to 8 bits, turned back to 32 bits when the net is loaded.

usage: python3 pack.py IN.onnx OUT.onnx [LEAST]
Arithmetic stays in 32 bits; only the file gets small. Tensors of LEAST numbers or more go to 8 bits, one scale an output
channel; smaller ones are left alone, since little is saved there and edges of letters are lost. Half precision is not
used: it needs a cast, and the browser's runtime takes 280 MB and seconds to compile the one function that casts.
"""

import sys

import numpy as np
import onnx
from onnx import helper, numpy_helper


def axis_of(graph, name):
    """The output channel's axis of a weight, by the node that uses it."""
    for node in graph.node:
        if name in node.input:
            return 0 if node.op_type in ("Conv", "Gemm") else None if node.op_type not in ("MatMul",) else 1
    return None


def pack(model, least):
    graph = model.graph
    kept, nodes = [], []
    for tensor in graph.initializer:
        values = numpy_helper.to_array(tensor)
        axis = axis_of(graph, tensor.name)
        if values.dtype != np.float32 or values.size < max(512, least) or values.ndim < 2 or axis is None:
            kept.append(tensor)
            continue
        others = tuple(i for i in range(values.ndim) if i != axis)
        scale = np.maximum(np.abs(values).max(axis=others), 1e-8).astype(np.float32) / 127
        shape = [-1 if i == axis else 1 for i in range(values.ndim)]
        small = np.clip(np.round(values / scale.reshape(shape)), -127, 127).astype(np.int8)
        kept.append(numpy_helper.from_array(small, tensor.name + "_q"))
        kept.append(numpy_helper.from_array(scale, tensor.name + "_s"))
        parts = [tensor.name + "_q", tensor.name + "_s"]
        nodes.append(helper.make_node("DequantizeLinear", parts, [tensor.name], axis=axis))
    del graph.initializer[:]
    graph.initializer.extend(kept)
    for node in reversed(nodes):
        graph.node.insert(0, node)
    return model


if __name__ == "__main__":
    packed = pack(onnx.load(sys.argv[1]), int(sys.argv[3]) if len(sys.argv) > 3 else 512)
    onnx.checker.check_model(packed)
    assert not any(node.op_type == "Cast" for node in packed.graph.node), "a cast is left"
    onnx.save(packed, sys.argv[2])
