#!/usr/bin/env bash
# Whole audits as a user starts them: time, peak memory, cases per second of the whole, and of what each size adds to the one before it, in
# which starting and compiling play no part: whether time is linear and memory flat. Processor time does not count what other programs do.
# Usage: src/bench/audit.sh [N...]   (default 10000 100000 1000000, ascending; a million cases are 4 GB in /tmp); needs target/fairlead.jar and
# GNU time. JAR, HEAP (400m), THREADS ("1 2"), OPTIONS (--without-forces) from the environment.
set -euo pipefail
jar=${JAR:-target/fairlead.jar}
heap=${HEAP:-400m}
options=${OPTIONS---without-forces}
[ $# -gt 0 ] || set -- 10000 100000 1000000
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
most=${!#}
java -jar "$jar" cohort --n "$most" --seed 1 -o "$work/all.ndjson" 2>/dev/null
printf '%9s %7s %8s %8s %8s %8s   %s\n' cases threads seconds cases/s "CPU s" "RSS MB" "what was added: cases/s, CPU us a case"
for threads in ${THREADS:-1 2}; do
  before="0 0 0"
  for n in "$@"; do
    head -n "$n" "$work/all.ndjson" > "$work/cases.ndjson"
    # shellcheck disable=SC2086 # the options are words
    /usr/bin/time -f '%e %M %U %S' -o "$work/t" java -Xmx"$heap" -jar "$jar" audit "$work/cases.ndjson" --threads "$threads" --fail-on never $options > "$work/$n.$threads.txt"
    read -r wall rss user system < "$work/t"
    awk -v n="$n" -v t="$threads" -v w="$wall" -v r="$rss" -v u="$user" -v s="$system" -v before="$before" 'BEGIN {
      split(before, b)
      printf "%9d %7d %8.1f %8.0f %8.1f %8.0f", n, t, w, n / w, u + s, r / 1024
      if (b[1] > 0 && w > b[2]) printf "   %8.0f %8.1f", (n - b[1]) / (w - b[2]), (u + s - b[3]) * 1e6 / (n - b[1])
      printf "\n" }'
    before="$n $wall $(awk -v u="$user" -v s="$system" 'BEGIN { print u + s }')"
    for other in "$work/$n".*.txt; do cmp "$other" "$work/$n.$threads.txt"; done
  done
done
