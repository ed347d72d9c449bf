"""Prints the tables of docs/worked-example.md (Python 3, standard library): python3 worked_example.py

Written from the equations in docs/method.md, apart from the program.
"""

from math import erf, exp, hypot, log, sqrt

PARTS = [("Receiver", 430.0, 1), ("Pipe to valve", 16.0, 1), ("Water left", 2.0, -1)]
ELEVATION, INTAKE_C, HUMIDITY = 240.0, 17.0, 0.48
RUNS = [(5.2, 8.4, 78.4, 26.0, 32.5), (5.2, 8.4, 78.9, 27.0, 33.0), (5.2, 8.4, 78.6, 27.5, 33.5)]
SPEED, RATED_SPEED = 972.0, 980.0
RATING = [(6.0, 16.9), (9.0, 16.2)]
SPAN, LIMIT, DIVISION = 16.0, 0.01, 0.1
CLOCK_U, THERMOMETER_U = 0.3, 1.0
HOLD = (8.40, 8.37, 600.0)
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

hold1, hold2, wait = HOLD[0] * 1e5 + pa, HOLD[1] * 1e5 + pa, HOLD[2]
k = log(hold1 / hold2) / wait
mid = (RUNS[0][0] + RUNS[0][1]) / 2
leak_each = k * v / pa * ta / (RUNS[0][3] + 273.15)
leak = leak_each * (mid * 1e5 + pa)
row("M10", 0, "", "P1", hold1, 1, "Pa")
row("M10", 0, "", "P2", hold2, 1, "Pa")
row("M10", 0, "", "t", wait, 0, "s")
row("M10", 0, "", "k", k, 10, "1/s")
row("M10", 0, "", "at hold", leak_each * (hold1 + hold2) / 2 * 1000, 5, "L/s")
row("M10", 0, "", "P", mid * 1e5 + pa, 1, "Pa")
row("M10", 0, "", "leak", leak * 1000, 5, "L/s")

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
    row("M7", i, "", "q", q * 1000, 4, "L/s")
    flows.append(q + leak)
    row("M10-add", i, "", "free", (q + leak) * 1000, 4, "L/s")

head("The test as a whole")
q = sum(flows) / 3
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

# the mean run, and the flow as a function of what was read
X = {"v": v, "p1": 5.2, "p2": 8.4, "t": sum(r[2] for r in RUNS) / 3, "pa": pa, "ta": ta, "rh": HUMIDITY,
     "t1": sum(r[3] for r in RUNS) / 3 + 273.15, "t2": sum(r[4] for r in RUNS) / 3 + 273.15}


def flow(x):
    vapour = x["rh"] * e_s(x["ta"])

    def content(p, temp):
        big_p = p * 1e5 + x["pa"]
        return (big_p - min(vapour / x["pa"] * big_p, e_s(temp))) / (z(big_p, temp) * temp)
    return x["v"] / x["t"] * x["ta"] / (x["pa"] - vapour) * (content(x["p2"], x["t2"]) - content(x["p1"], x["t1"]))


def sens(**change):
    """d ln q for a unit change of these together."""
    step = 1e-5
    up = {n: x + step * change.get(n, 0) for n, x in X.items()}
    down = {n: x - step * change.get(n, 0) for n, x in X.items()}
    return abs(flow(up) - flow(down)) / (2 * step * flow(X))


third, reading = LIMIT * SPAN / 3, DIVISION / 2 / sqrt(3)
root = sqrt(len(RUNS))
plate = 0.02 / sqrt(3)
run_u = sqrt((reading * sens(p1=1)) ** 2 + (reading * sens(p2=1)) ** 2 + (CLOCK_U * sens(t=1)) ** 2
             + (0.3 * hypot(sens(t1=1), sens(t2=1))) ** 2)
scatter = sqrt(sum((f - q) ** 2 for f in flows) / 2) / q
parts = [
    ("VOLUME", sqrt(sum((plate * litres / 1000 / v) ** 2 for _, litres, _ in PARTS)), "volume"),
    ("GAUGE_AT_STOP", third * sens(p2=1), "gauge"),
    ("GAUGE_AT_START", third * sens(p1=1), "gauge"),
    ("GAUGE_SPAN", third * sens(p1=5.2 / SPAN, p2=8.4 / SPAN), "gauge"),
    ("GAUGE_OFFSET", third * sens(p1=1, p2=1), "gauge"),
    ("AIR_AT_START", THERMOMETER_U * sens(t1=1), "thermometer"),
    ("AIR_AT_STOP", THERMOMETER_U * sens(t2=1), "thermometer"),
    ("STATION", 0.02 / sqrt(3) * pa * sens(pa=1e4) / 1e4, "no"),
    ("INTAKE_TEMPERATURE", THERMOMETER_U * sens(ta=1), "no"),
    ("HUMIDITY", 0.1 * sens(rh=1), "no"),
    ("READING_AT_STOP", reading * sens(p2=1) / root, "no"),
    ("READING_AT_START", reading * sens(p1=1) / root, "no"),
    ("CLOCK", CLOCK_U * sens(t=1) / root, "no"),
    ("AIR_READING", 0.3 * hypot(sens(t1=1), sens(t2=1)) / root, "no"),
    ("RUN_SCATTER", sqrt(max(0, scatter ** 2 - run_u ** 2)) / root, "no"),
    ("LEAK", 0.15 * leak / q, "no"),
    ("OPERATION", 0.01, "no")]
combined = sqrt(sum(u * u for _, u, _ in parts))
tolerance = 0.06
ratio = q0 * 1000 / expected
head("Whether it meets the nameplate")
row("M15", 0, "", "u", combined * ratio * 100, 3, "%")
row("M15", 0, "", "limit", (1 - tolerance) * 100, 0, "%")
row("M15", 0, "", "probability", 50 * (1 + erf((ratio - 1 + tolerance) / (combined * ratio) / sqrt(2))), 2, "%")

print("\n### Uncertainty\n\n| Component | Relative, k = 1 | Shared with tests of the same |\n|---|---|---|")
for name, u, shared in sorted(parts, key=lambda part: -part[1]):
    if u > 0:
        print(f"| {name} | {u * 100:.3f} % | {shared} |")
for name, among in (("new in each test", ["no"]), ("shared", ["volume", "gauge", "thermometer"])):
    print(f"| {name} | {sqrt(sum(u * u for _, u, s in parts if s in among)) * 100:.3f} % | |")
print(f"| combined | {combined * 100:.3f} % | |")
