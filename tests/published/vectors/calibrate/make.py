"""Posterior of a crew's rate by numerical integration: no use is made of the conjugate formula.

Prior: the logarithm of the rate is normal. Likelihood: the logarithm of the minutes of all trees together is normal
about the logarithm of the model's sum plus the rate, with the spread of a sum of independent log-normal trees
(matched by mean and variance, Fenton 1960). Mean and standard deviation of the posterior by quadrature.

Made with Python and SciPy of the versions in the first line of the table; run it again with
    python3 tests/published/vectors/calibrate/make.py > tests/published/vectors/calibrate/calibrate.csv
"""
import platform
import numpy as np
import scipy
from scipy import integrate, stats

K = (1.14, 1.3, 1.96)          # tool, rest, small delays: content/rules/constants.csv
Z = 2.563                      # P90 on both sides together, as the model states it
crew = np.log(K[2] / K[0]) / Z

CASES = [
    [(2.5, 4.0, 6.6)] * 5 + [24.0],
    [(2.5, 4.0, 6.6), (1.5, 2.5, 4.1), (4.4, 7.2, 11.8)] + [9.0],
    [(2.5, 4.0, 6.6), (1.5, 2.5, 4.1)] + [15.0],
    [(3.2, 5.6, 9.6)] * 30 + [110.0],
    [(0.9, 1.7, 2.9)] * 12 + [22.5],
]

print(f"# Python {platform.python_version()}, NumPy {np.__version__}, SciPy {scipy.__version__}")
print("trees,minutes,log_mean,log_sd")
for case in CASES:
    trees, minutes = case[:-1], case[-1]
    mean = variance = 0.0
    for low, likely, high in trees:
        whole = np.log(high / low) / Z
        own = np.sqrt(max(whole**2 - crew**2, 0.0))
        tree = stats.lognorm(s=own, scale=likely)
        mean += tree.mean()
        variance += tree.var()
    v = np.log1p(variance / mean**2)
    mu = np.log(mean) - v / 2
    density = lambda r: stats.norm.pdf(r, 0, crew) * stats.norm.pdf(np.log(minutes), mu + r, np.sqrt(v))
    grid = dict(points=[np.log(minutes) - mu, 0.0], limit=400)
    total = integrate.quad(density, -4, 4, **grid)[0]
    m = integrate.quad(lambda r: r * density(r), -4, 4, **grid)[0] / total
    s = np.sqrt(integrate.quad(lambda r: (r - m) ** 2 * density(r), -4, 4, **grid)[0] / total)
    packed = ";".join(f"{a} {b} {c}" for a, b, c in trees)
    print(f"{packed},{minutes},{m:.9f},{s:.9f}")
