"""Prints the tables of docs/worked-example.md (Python 3, standard library): python3 worked_example.py

Written from the equations in docs/method.md, apart from the program.
"""

from math import exp, hypot, log, sqrt

PARTS = [("Receiver", 430.0, 1), ("Pipe to valve", 16.0, 1), ("Water left", 2.0, -1)]
ELEVATION, INTAKE_C, HUMIDITY = 240.0, 17.0, 0.48
RUNS = [(5.2, 8.4, 78.4, 26.0, 32.5), (5.2, 8.4, 78.9, 27.0, 33.0), (5.2, 8.4, 78.6, 27.5, 33.5)]
SPEED, RATED_SPEED = 972.0, 980.0
RATING = [(6.0, 16.9), (9.0, 16.2)]
STATES = [("STANDARD_100KPA_20C_DRY", 100e3, 293.15, 0),
          ("STANDARD_14_5PSIA_68F_DRY", 14.5 * 6894.757293168361, 293.15, 0),
          ("STANDARD_14_7PSIA_68F_36RH", 14.7 * 6894.757293168361, 293.15, 0.36),
          ("STANDARD_14_696PSIA_60F_DRY", 14.696 * 6894.757293168361, 519.67 / 1.8, 0),
          ("NORMAL_101_325KPA_0C_DRY", 101325.0, 273.15, 0)]

COLUMNS = "| Equation | Run | About | Symbol | Value | Unit |\n|---|---|---|---|---|---|"


def row(equation, run, about, symbol, value, digits, unit):
    print(f"| {equation} | {run or ''} | {about} | {symbol} | {value:.{digits}f} | {unit} |")


def head(text):
    print(f"\n### {text}\n\n{COLUMNS}")


def e_s(t):
    return exp(-5800.2206 / t + 1.3914993 - 0.048640239 * t + 4.1764768e-5 * t ** 2
               - 1.4452093e-8 * t ** 3 + 6.5459673 * log(t))


def z(p, t):
    b = 34.9568 - 6687.72 / t - 2.10141e6 / t ** 2 + 9.24746e7 / t ** 3
    return 1 + b * 1e-6 * p / (8.31446261815324 * t)


head("Net volume")
for name, litres, sign in PARTS:
    row("M2-part" if sign > 0 else "M2-less", 0, name, "v", litres, 1, "L")
v = sum(litres * sign for _, litres, sign in PARTS) / 1000
row("M2", 0, "", "V", v * 1000, 1, "L")

head("The air at the intake")
pa = 101325 * (1 - 2.25577e-5 * ELEVATION) ** 5.25588
ta = INTAKE_C + 273.15
es = e_s(ta)
dry = pa - HUMIDITY * es
x = HUMIDITY * es / pa
row("M3", 0, "", "h", ELEVATION, 0, "m")
row("M3", 0, "", "Pa", pa, 1, "Pa")
row("M4", 0, "", "Ta", ta, 2, "K")
row("M4", 0, "", "es", es, 2, "Pa")
row("M5", 0, "", "φ", HUMIDITY, 2, "1")
row("M5", 0, "", "x", x, 7, "1")
row("M5", 0, "", "dry", dry, 1, "Pa")

flows, hands, ends = [], [], []
for i, (p1, p2, t, c1, c2) in enumerate(RUNS, 1):
    head(f"Run {i}")
    air = v * (p2 - p1) * 1e5 / pa
    hands.append(air / t)
    row("M1", i, "", "air", air * 1000, 2, "L")
    row("M1", i, "", "q", air / t * 1000, 4, "L/s")
    contents = []
    for equation, p, c in (("M6-start", p1, c1), ("M6-stop", p2, c2)):
        big_p, temp = p * 1e5 + pa, c + 273.15
        d = big_p - min(x * big_p, e_s(temp))
        content = d / (z(big_p, temp) * temp)
        contents.append((content, temp))
        row(equation, i, "", "P", big_p, 1, "Pa")
        row(equation, i, "", "T", temp, 2, "K")
        row(equation, i, "", "es", e_s(temp), 2, "Pa")
        row(equation, i, "", "D", d, 1, "Pa")
        row(equation, i, "", "Z", z(big_p, temp), 7, "1")
        row(equation, i, "", "C", content, 4, "Pa/K")
    ends.append(contents)
    q = v / t * ta / dry * (contents[1][0] - contents[0][0])
    flows.append(q)
    row("M7", i, "", "q", q * 1000, 4, "L/s")

head("The test as a whole")
q = sum(flows) / 3
mid = (RUNS[0][0] + RUNS[0][1]) / 2
row("M12", 0, "", "mid", mid, 3, "bar")
row("M19", 0, "", "n", 3, 0, "1")
row("M19", 0, "", "spread", (max(flows) - min(flows)) / q * 100, 3, "%")
row("M19", 0, "", "q", q * 1000, 4, "L/s")
q0 = q * RATED_SPEED / SPEED
row("M14", 0, "", "q0", q0 * 1000, 4, "L/s")

head("Standard flow")
for name, p, t, rh in STATES:
    row("M11", 0, name, "standard", q * dry / (p - rh * e_s(t)) * t / ta * 1000, 4, "L/s")

head("Beside the nameplate")
(pl, ql), (ph, qh) = RATING
expected = ql + (mid - pl) / (ph - pl) * (qh - ql)
for p, rated in RATING:
    row("M13-point", 0, "INTAKE", "p", p, 1, "bar")
    row("M13-point", 0, "INTAKE", "rated", rated, 1, "L/s")
row("M13", 0, "INTAKE", "measured", q0 * 1000, 4, "L/s")
row("M13", 0, "INTAKE", "expected", expected, 4, "L/s")
row("M13", 0, "INTAKE", "ratio", q0 * 1000 / expected * 100, 3, "%")

print("\n### Uncertainty\n\n| Component | Relative, k = 1 | Shared between tests |\n|---|---|---|")
(c1, t1), (c2, t2) = ends[0]
mean = q
scatter = sqrt(sum((f - mean) ** 2 for f in flows) / 2) / mean / sqrt(3)
parts = [("TEST_TO_TEST", max(0.05, scatter), "no"), ("VOLUME", 0.02 / sqrt(3), "yes"), ("GAUGE", 0.03, "yes"),
         ("AIR_TEMPERATURE", 2 * hypot(c1 / t1, c2 / t2) / (c2 - c1), "yes")]
for name, u, shared in parts:
    print(f"| {name} | {u * 100:.3f} % | {shared} |")
print(f"| combined | {sqrt(sum(u * u for _, u, _ in parts)) * 100:.3f} % | |")
