# Rows of a Dask data frame: each partition goes through the filter `litrebar rows` as CSV and comes back with its results. A part whose
# worker dies is computed elsewhere, with the same numbers. Keep partitions at some hundred thousand rows: a process is started for each.
# Usage: run.py PLAN.json [rows] [partitions] [--kill]; LITREBAR is the command, `litrebar` unless set.
import io
import os
import shlex
import signal
import subprocess
import sys
import time

import pandas as pd
from dask import delayed
from distributed import Client, LocalCluster

COMMAND = shlex.split(os.environ.get("LITREBAR", "litrebar"))


def source(first, count):
    rows = range(first, first + count)
    return pd.DataFrame({"p": [1 + (row * 37 % 23000) / 100 for row in rows], "T": [5 + (row * 11 % 3000) / 100 for row in rows]})


def computed(partition, plan):
    words = [*COMMAND, "rows", "-", "-", "--plan", plan, "--read-as", "csv", "--write-as", "csv"]
    done = subprocess.run(words, input=partition.to_csv(index=False).encode(), stdout=subprocess.PIPE)
    if done.returncode not in (0, 3):  # 3: some rows have no result, and say why
        raise RuntimeError(f"litrebar ended with {done.returncode}")
    return pd.read_csv(io.BytesIO(done.stdout))


def main():
    numbers = [int(word) for word in sys.argv[2:] if word.isdigit()]
    count, parts = (numbers + [400_000, 8][len(numbers) :])[:2]
    plan = os.path.abspath(sys.argv[1])
    size = count // parts
    with LocalCluster(n_workers=2, threads_per_worker=1, host="127.0.0.1", dashboard_address=None) as cluster, Client(cluster) as client:
        began = time.time()
        frames = client.compute([delayed(computed)(delayed(source)(part * size, size), plan) for part in range(parts)])
        if "--kill" in sys.argv:
            time.sleep(0.5)
            os.kill(next(iter(client.run(os.getpid).values())), signal.SIGKILL)
        made = pd.concat(client.gather(frames), ignore_index=True)
        seconds = time.time() - began
    alone = computed(source(0, size * parts), plan)
    print(f"{len(made)} rows in {parts} partitions; {'the same' if made.equals(alone) else 'DIFFERENT'} as from one process")
    print(f"{seconds:.1f} s", file=sys.stderr)


if __name__ == "__main__":
    main()
