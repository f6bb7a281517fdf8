"""Weights of an ONNX net to 4 and 8 bits, turned back to 32 bits when the net is loaded.

usage: python3 pack.py IN.onnx OUT.onnx            (a net trained knowing how it is rounded: the recogniser)
       python3 pack.py IN.onnx OUT.onnx LEAST      (any other, to 8 bits at most: the finder)

Without LEAST, weights are rounded as rounding.py rounds them in training. With it, tensors of LEAST numbers or more go to
8 bits, one scale a row, and smaller ones are left alone, since little is saved there and edges of letters are lost.
Arithmetic stays in 32 bits; only the file gets small. Half precision is not used: it needs a cast, and the browser's
runtime takes 280 MB and seconds to compile the one function that casts.
"""

import sys

import numpy as np
import onnx
from onnx import TensorProto, helper, numpy_helper, version_converter

from bits import BLOCK, bits_of

OPSET, IR = 21, 10  # the first that have 4 bits, and scales of blocks


def bits_for(shape, least):
    """Of a weight whose rows come first."""
    if least is None:
        return bits_of(shape)
    return 8 if len(shape) > 1 and np.prod(shape) >= least else 32


def join_twins(graph):
    """The exporter keeps one of equal tensors and makes the others from it by Identity; here all users name the one."""
    stored = {tensor.name for tensor in graph.initializer}
    twins = {node.output[0]: node for node in graph.node if node.op_type == "Identity" and node.input[0] in stored}
    for node in graph.node:
        for i, name in enumerate(node.input):
            if name in twins:
                node.input[i] = twins[name].input[0]
    for node in twins.values():
        graph.node.remove(node)


def weights(graph):
    """Names of the weights, each with the axis that counts its rows: a row is what makes one output."""
    axes = {"Conv": 0, "Gemm": 0, "MatMul": 1}
    return {node.input[1]: axes[node.op_type] for node in graph.node if node.op_type in axes}


def fine(values, axis, name):
    """8 bits, one scale a row; the scale never falls to nought."""
    far = np.abs(values).max(axis=tuple(i for i in range(values.ndim) if i != axis), keepdims=True)
    scale = np.maximum(far, 1e-8).astype(np.float32) / 127
    small = np.clip(np.round(values / scale), -127, 127).astype(np.int8)
    tensors = [numpy_helper.from_array(small, name + "_q"), numpy_helper.from_array(scale.ravel(), name + "_s")]
    return tensors, [helper.make_node("DequantizeLinear", [name + "_q", name + "_s"], [name], axis=axis)]


def coarse(values, axis, name):
    """4 bits in blocks along each row, whose number farthest from nought becomes -8: a scale may be negative.

    Rows are filled up to whole blocks, and what fills them is cut off again when the net is loaded.
    """
    rows = values.T if axis else values.reshape(len(values), -1)
    count, length = rows.shape
    parts = np.pad(rows, ((0, 0), (0, -length % BLOCK))).reshape(count, -1, BLOCK)
    far = np.take_along_axis(parts, np.abs(parts).argmax(axis=2)[..., None], axis=2)
    scale = np.where(far == 0, np.float32(1), far / np.float32(-8))
    small = np.clip(np.round(parts / scale), -8, 7).astype(np.int8).ravel()
    pairs = (small[::2] & 15) | (small[1::2] << 4)  # two numbers a byte, the first in the low half
    tensors = [
        helper.make_tensor(name + "_q", TensorProto.INT4, [count, parts.shape[1] * BLOCK], pairs.tobytes(), raw=True),
        numpy_helper.from_array(scale.reshape(count, -1), name + "_s"),
    ]
    nodes = [helper.make_node("DequantizeLinear", [name + "_q", name + "_s"], [name + "_d"], axis=1, block_size=BLOCK)]
    if length % BLOCK:
        tensors += [whole(name + "_a", 0), whole(name + "_b", length), whole(name + "_x", 1)]
        nodes.append(helper.make_node("Slice", [name + end for end in ("_d", "_a", "_b", "_x")], [name + "_c"]))
    if axis:
        nodes.append(helper.make_node("Transpose", [nodes[-1].output[0]], [name], perm=[1, 0]))
    else:
        tensors.append(whole(name + "_r", *values.shape))
        nodes.append(helper.make_node("Reshape", [nodes[-1].output[0], name + "_r"], [name]))
    return tensors, nodes


def whole(name, *numbers):
    return numpy_helper.from_array(np.array(numbers, np.int64), name)


def pack(model, least=None):
    if least is None:
        model = version_converter.convert_version(model, OPSET)
        model.ir_version = IR
    graph = model.graph
    join_twins(graph)
    axes = weights(graph)
    kept, nodes = [], []
    for tensor in graph.initializer:
        values, axis = numpy_helper.to_array(tensor), axes.get(tensor.name)
        bits = 32 if axis is None else bits_for(np.moveaxis(values, axis, 0).shape, least)
        if bits == 32:
            kept.append(tensor)
            continue
        stored, steps = (coarse if bits == 4 else fine)(values, axis, tensor.name)
        kept += stored
        nodes += steps
    del graph.initializer[:]
    graph.initializer.extend(kept)
    for node in reversed(nodes):
        graph.node.insert(0, node)
    return model


if __name__ == "__main__":
    packed = pack(onnx.load(sys.argv[1]), int(sys.argv[3]) if len(sys.argv) > 3 else None)
    onnx.checker.check_model(packed)
    assert not any(node.op_type == "Cast" for node in packed.graph.node), "a cast is left"
    onnx.save(packed, sys.argv[2])
