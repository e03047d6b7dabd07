#!/bin/sh
# Takes the same photos in by two programs in turns: sh src/bench/intake-pairs.sh PHOTOS WORK ROUNDS OLD NEW
# OLD and NEW are commands such as "target/bin/quarterlight" that a verb can follow; WORK is a folder in memory. Prints wall time and processor
# time (children included) of each run, and the ratios of each pair, new to old.
set -e
photos=$1 work=$2 rounds=$3 old=$4 new=$5
export TIMEFORMAT='%R %U %S'

run() {
    rm -rf "$work/pair-visit"
    $1 new "$work/pair-visit" --car Any --style coupe >/dev/null
    bash -c 'time "$@" >/dev/null 2>&1' run $1 intake "$work/pair-visit" "$photos" 2>&1 | awk '{printf "%.2f %.2f\n", $1, $2 + $3}'
    rm -rf "$work/pair-visit"
}

round=1
while [ "$round" -le "$rounds" ]; do
    if [ $((round % 2)) -eq 1 ]; then
        a=$(run "$old")
        b=$(run "$new")
    else
        b=$(run "$new")
        a=$(run "$old")
    fi
    echo "$a $b" | awk '{printf "old %.2f s, processor %.2f s; new %.2f s, processor %.2f s; ratios %.3f %.3f\n", $1, $2, $3, $4, $3 / $1, $4 / $2}'
    round=$((round + 1))
done
