#!/bin/sh
# Trains both nets side by side, each on an accelerator of its own where there are two. Checkpoints and logs go to OUT.
# usage: sh train.sh ATLASES OUT SECONDS FROM TO SEED PEAK [RESUME]     (ATLASES holds train.npz and held.npz)
set -eu
atlases=$1 out=$2 seconds=$3 from=$4 to=$5 seed=$6 peak=$7 resume=${8:-}
here=$(dirname "$0")
export OMP_NUM_THREADS=1 PYTHONUNBUFFERED=1
accelerators=$(python3 -c "import torch; print(torch.cuda.device_count())")
drawing=$(($(nproc --all) - 2))
second=$((accelerators > 1 ? 1 : 0))
options="--atlas $atlases/train.npz --held $atlases/held.npz --out $out --seconds $seconds --span $from $to --peak $peak --checks 10 ${resume:+--resume $resume}"
CUDA_VISIBLE_DEVICES=0 python3 "$here/train_recogniser.py" $options --seed "$seed" --workers $((drawing * 6 / 10)) > "$out/recogniser.log" 2>&1 &
reads=$!
CUDA_VISIBLE_DEVICES=$second python3 "$here/train_finder.py" $options --seed "$((seed + 1000))" --workers $((drawing * 4 / 10)) > "$out/finder.log" 2>&1 &
finds=$!
wait $reads || true
wait $finds || true
tail -n 30 "$out/recogniser.log" "$out/finder.log"
