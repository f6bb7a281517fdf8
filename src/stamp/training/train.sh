#!/bin/sh
# Trains both nets side by side, each on half of the accelerators, or one on all. Checkpoints and logs go to OUT.
# usage: sh train.sh ATLASES OUT SECONDS FROM TO SEED PEAK [RESUME [NET]]     (ATLASES holds train.npz and held.npz)
set -eu
atlases=$1 out=$2 seconds=$3 from=$4 to=$5 seed=$6 peak=$7 resume=${8:-} only=${9:-}
here=$(dirname "$0")
export OMP_NUM_THREADS=1 PYTHONUNBUFFERED=1 MASTER_ADDR=127.0.0.1
accelerators=$(python3 -c "import torch; print(max(1, torch.cuda.device_count()))")
drawing=$(($(nproc --all) - 1 - accelerators))
half=$(((accelerators + 1) / 2))
options="--atlas $atlases/train.npz --held $atlases/held.npz --out $out --seconds $seconds --span $from $to --peak $peak --checks 10 ${resume:+--resume $resume}"

# learn NET SEED FIRST COUNT PERCENT: COUNT processes from accelerator FIRST on, which draw with PERCENT of the processors
learn() {
  export WORLD_SIZE=$4 MASTER_PORT=$((29500 + $3))
  rank=0
  while [ $rank -lt "$4" ]; do
    CUDA_VISIBLE_DEVICES=$(($3 + rank)) RANK=$rank python3 "$here/train_$1.py" $options --seed "$2" --workers $((drawing * $5 / 100 / $4)) >> "$out/$1.log" 2>&1 &
    rank=$((rank + 1))
  done
}

if [ -n "$only" ]; then
  learn "$only" "$seed" 0 "$accelerators" 100
else
  learn recogniser "$seed" 0 "$half" 45
  learn finder "$((seed + 1000))" $((accelerators - half)) "$half" 55
fi
wait
tail -n 30 "$out"/*.log
