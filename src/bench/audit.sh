#!/usr/bin/env bash
# Whole audits as a user starts them: time, peak memory, cases per second, and whether time is linear and memory flat.
# Usage: src/bench/audit.sh [N...]   (default 10000 100000); needs target/fairlead.jar, GNU time and room in /tmp
set -euo pipefail
jar=${JAR:-target/fairlead.jar}
heap=${HEAP:-400m}
options=${OPTIONS:-}  # such as --without-forces
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
printf '%10s %8s %10s %9s %9s %12s\n' cases threads seconds "RSS MB" "CPU s" cases/s
for n in "${@:-10000 100000}"; do for n in $n; do
  java -jar "$jar" cohort --n "$n" --seed 1 -o "$work/$n.ndjson" 2>/dev/null
  for threads in 1 2; do
    /usr/bin/time -f '%e %M %U %S' -o "$work/t" java -Xmx"$heap" -jar "$jar" audit "$work/$n.ndjson" --threads $threads --fail-on never $options > "$work/$n.$threads.txt"
    read -r wall rss user system < "$work/t"
    awk -v n="$n" -v t=$threads -v w="$wall" -v r="$rss" -v u="$user" -v s="$system" 'BEGIN { printf "%10d %8d %10.1f %9.0f %9.1f %12.0f\n", n, t, w, r / 1024, u + s, n / w }'
  done
  cmp "$work/$n.1.txt" "$work/$n.2.txt"
  rm "$work/$n.ndjson"
done; done
