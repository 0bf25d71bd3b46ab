"""The work of RepeatSetsBenchmark in numpy. Prints: median ms, outliers, sets too wide, version."""
import statistics
import sys
import time

import numpy as np

# n = 10: t(0.975, 9) / sqrt(10); 4.5 x 0.1 % air; two-sided Grubbs 5 %.
HALF_WIDTH, LIMIT, CRITICAL, DIVISION, SLACK = 2.2621571627409915 / 10**0.5, 0.45, 2.289954, 0.1, 1 + 1e-9


def work(values):
    mean = values.mean(axis=1)
    deviation = values.std(axis=1, ddof=1)
    spread = values.max(axis=1) - values.min(axis=1)
    half_width = HALF_WIDTH * deviation
    distance = np.abs(values - mean[:, None])
    farthest = distance.argmax(axis=1)
    most = distance[np.arange(len(values)), farthest]
    with np.errstate(divide="ignore", invalid="ignore"):
        statistic = most / deviation
    outlier = (most > DIVISION * SLACK) & (statistic > CRITICAL)
    return mean, deviation, half_width, spread <= LIMIT * SLACK, statistic, farthest, outlier


values = np.fromfile(sys.argv[1], dtype="<f8").reshape(-1, 10)
result = work(values)
times = []
for _ in range(11):
    begun = time.perf_counter()
    result = work(values)
    times.append(1000 * (time.perf_counter() - begun))
print(f"{statistics.median(times):.2f} {int(result[6].sum())} {int((~result[3]).sum())} numpy {np.__version__}")
