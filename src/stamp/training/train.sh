#!/bin/sh
# Trains both nets side by side on one accelerator. Checkpoints and logs go to OUT.
# usage: sh train.sh ATLASES OUT SECONDS FROM TO SEED [RESUME]     (ATLASES holds train.npz and held.npz)
set -eu
atlases=$1 out=$2 seconds=$3 from=$4 to=$5 seed=$6 resume=${7:-}
here=$(dirname "$0")
export OMP_NUM_THREADS=1 PYTHONUNBUFFERED=1
options="--atlas $atlases/train.npz --held $atlases/held.npz --out $out --seconds $seconds --span $from $to --checks 10 ${resume:+--resume $resume}"
python3 "$here/train_recogniser.py" $options --seed "$seed" > "$out/recogniser.log" 2>&1 &
first=$!
python3 "$here/train_finder.py" $options --seed "$((seed + 1000))" > "$out/finder.log" 2>&1 &
second=$!
wait $first || true
wait $second || true
tail -n 30 "$out/recogniser.log" "$out/finder.log"
