"""Grows the plants of the plan checker's example plan, apart from Sallet.

A plain re-implementation of the growth equations of docs/models/growth.md with the parameters of
the crop catalogue. It prints the edible grams that stand in ExamplePlan.java and ExampleReplan.java. Needs only
Python 3:

    python3 lives.py
"""

from datetime import date, timedelta
from math import exp, log, lgamma, sqrt

FIRST = date(2027, 1, 4)
FIRST_STANDING = date(2026, 11, 30)
VIGOUR = 0.85

GENERAL = dict(Y=0.8, rmax=0.3, q=1.08, ms=0.03, mr=0.01, Dref=12, dD=0.2, dT=-0.01)
CROPS = {
    "loose-leaf lettuce, green": dict(
        GENERAL, c=0.05, mu=0.45, Tb=4, To1=22, To2=26, W0=0.0009, LA0=0.6, tau=0.12, lam=0.92,
        SLA0=430, sD=-0.35, DMC0=0.042, per_pot=1, edible=0.95, ageing=0.93,
        B50=1100, Pc=13, table=(20, 3, 15, 4), factor=1, share=0.8),
    "salad rocket": dict(
        GENERAL, c=0.055, mu=0.43, Tb=4, To1=20, To2=26, W0=0.0014, LA0=0.8, tau=0.12, lam=0.92,
        SLA0=350, sD=-0.35, DMC0=0.072, per_pot=3, edible=0.95, ageing=0.93,
        B50=700, Pc=12, table=(20, 6, 15, 9), factor=0.8, share=0.7),
    "basil": dict(
        GENERAL, c=0.075, mu=0.4, Tb=10.5, To1=26, To2=31, W0=0.0012, LA0=0.5, tau=0.15, lam=0.8,
        SLA0=430, sD=-0.45, DMC0=0.085, per_pot=1, edible=0.75, ageing=0.95,
        B50=1800, Pc=12, thermal=(10.5, 65), factor=1, share=0.7),
    "crisphead lettuce": dict(
        GENERAL, c=0.07, mu=0.45, Tb=4, To1=22, To2=26, W0=0.0009, LA0=0.6, tau=0.12, lam=0.92,
        SLA0=430, sD=-0.35, DMC0=0.04, per_pot=1, edible=0.8, ageing=0.93,
        B50=1200, Pc=13, table=(20, 3, 15, 4), factor=1, share=0.8),
}

# The example's surroundings drift slowly, so that a life moved by one day gives other grams.
# Each place: carbohydrate g/m2/d, light mol/m2/d, mean temperature C, on day i of the plan.
PLACES = {
    "nursery": lambda i: (16.0, 8.6, 19.0),
    "bright": lambda i: (20.0 + 0.05 * i, 11.0 + 0.02 * i, 18.0 + 0.03 * i),
    "dim": lambda i: (14.0 + 0.05 * i, 8.0 + 0.02 * i, 18.0 + 0.03 * i),
}
PHOTOPERIOD = 12.0
BOLTING_HEAT = 14.0
CELL, PLACE = 16.0, 49.0
SITE = {"bright": 400.0, "dim": 225.0}


def germination_days(crop, celsius=19.0):
    if "table" in crop:
        t2, d2, t1, d1 = crop["table"]
        days = exp(log(d1) + (log(d2) - log(d1)) * (celsius - t1) / (t2 - t1))
    else:
        base, theta = crop["thermal"]
        days = theta / (celsius - base)
    return days * crop["factor"]


def cells_for(plants, share, certainty=0.9, strength=20):
    a, b = share * strength, (1 - share) * strength

    def beta(x, y):
        return lgamma(x) + lgamma(y) - lgamma(x + y)

    n = plants
    while True:
        at_least = sum(
            exp(lgamma(n + 1) - lgamma(k + 1) - lgamma(n - k + 1) + beta(k + a, n - k + b) - beta(a, b))
            for k in range(plants, n + 1))
        if at_least >= certainty - 1e-12:
            return n
        n += 1


def response(p, t):
    if t <= p["Tb"]:
        return 0.0
    if t < p["To1"]:
        return (t - p["Tb"]) / (p["To1"] - p["Tb"])
    return 1.0  # the example stays below the upper limits


def grow(name, emergence, to_nursery, to_bench, group, end, picks, first=FIRST, vigour=VIGOUR,
         state=None):
    """Standing fresh grams of the pot each day (before picks), and what is left after the last.

    The places drift from the day first on. A state is that of one plant on a day, its growth done:
    day, shoot, root, reserve, leaf area.
    """
    p = CROPS[name]
    ws, wr = (1 - p["tau"]) * p["W0"], p["tau"] * p["W0"]
    r, la, memory = 0.1 * p["W0"], p["LA0"], None
    standing, bolting = {}, 0.0
    day = emergence
    while day <= end:
        i = (day - first).days
        if day < to_nursery:
            place, site = "nursery", CELL
        elif day < to_bench:
            place, site = "nursery", PLACE
        else:
            place, site = group, SITE[group]
        g, dli, t = PLACES[place](i)
        memory = dli if memory is None else memory + (dli - memory) / 5
        age = (day - emergence).days
        gain = vigour * p["q"] * g * p["ageing"] ** (max(0, age - 35) / 7)
        free = la / (1 + p["c"] * sqrt(la))
        area = free / (1 + (free / (site / p["per_pot"])) ** 4) ** 0.25
        w = ws + wr
        r += gain * area * 1e-4 - (p["ms"] * ws + p["mr"] * wr) * 2 ** ((t - 25) / 10)
        assert r >= 0
        dw = min(w * (exp(p["mu"] * response(p, t)) - 1), p["Y"] * r)
        r = min(r - dw / p["Y"], p["rmax"] * (w + dw))
        ps = 1 if wr > p["tau"] * (w + dw) else 1 - p["tau"]
        light = max(memory, 1) / p["Dref"]
        x = p["To2"] - 2
        warmth = exp(0.04 * (min(t, x) - (x - 2)) - 0.03 * max(0, t - x))
        sla = min(900, max(150, p["SLA0"] * light ** p["sD"] * warmth))
        ws, wr, la = ws + ps * dw, wr + (1 - ps) * dw, la + sla * p["lam"] * ps * dw
        if state and day == state[0]:
            ws, wr, r, la = state[1:]
        dry = min(0.12, max(0.025, p["DMC0"] * light ** p["dD"] * exp(p["dT"] * (t - 20))))
        standing[day] = p["per_pot"] * (ws + r) / dry
        keep = 1 - picks.get(day, 0)
        ws, r, la = ws * keep, r * keep, la * keep
        bolting += BOLTING_HEAT * min(1, max(0, (PHOTOPERIOD - p["Pc"]) / 4 + 0.5))
        day += timedelta(1)
    return standing, p["per_pot"] * (ws + r) / dry * p["edible"], bolting


def course(name, emergence, to_nursery, to_bench, group, end, picks, **start):
    """Prints a course's picks (a share of 1 is the lift) and what is cleared away."""
    standing, left, _ = grow(name, emergence, to_nursery, to_bench, group, end, picks, **start)
    print(name, "emerged", emergence)
    for day, share in picks.items():
        print("  %s share %.2f: %.9f g of %.3f g standing"
              % (day, share, share * standing[day] * CROPS[name]["edible"], standing[day]))
    print("  cleared %s: %.9f g" % (end, left))


def on(month, day):
    return date(2027, month, day)


def main():
    for name, crop in CROPS.items():
        print("%s: %.4f days to emerge; cells for 1, 2, 3 plants: %s"
              % (name, germination_days(crop), [cells_for(k, crop["share"]) for k in (1, 2, 3)]))
    course("loose-leaf lettuce, green", on(1, 10), on(1, 13), on(1, 27), "bright", on(2, 27),
           {on(2, 6): 0.3, on(2, 13): 0.4, on(2, 27): 1})
    course("loose-leaf lettuce, green", on(1, 10), on(1, 13), on(1, 30), "bright", on(3, 10),
           {on(2, 6): 0.4, on(2, 13): 0.25, on(3, 6): 0.4})
    course("salad rocket", on(1, 15), on(1, 16), on(1, 30), "dim", on(2, 27),
           {on(2, 6): 0.4, on(2, 13): 0.35, on(2, 27): 1})
    course("crisphead lettuce", on(1, 17), on(1, 20), on(2, 3), "bright", on(3, 13), {on(3, 13): 1})
    course("basil", on(1, 21), on(1, 23), on(2, 6), "dim", on(3, 27),
           {on(3, 6): 0.4, on(3, 13): 0.4, on(3, 20): 0.3})
    course("loose-leaf lettuce, green", on(2, 3), on(2, 6), on(2, 27), "bright", on(3, 27),
           {on(3, 13): 0.4, on(3, 27): 1})
    replan()


def replan():
    """The example that begins with plants that stand."""
    lettuce = dict(first=FIRST_STANDING, vigour=0.9, state=(FIRST, 6.0, 0.8, 0.5, 1500.0))
    old = ("loose-leaf lettuce, green", date(2026, 12, 4), date(2026, 12, 9), date(2026, 12, 23),
           "bright")
    course(*old, on(1, 16), {on(1, 9): 0.3, on(1, 16): 1}, **lettuce)
    course(*old, on(1, 4), {}, **lettuce)
    course("salad rocket", date(2026, 12, 22), date(2026, 12, 23), on(1, 6), "dim", on(1, 30),
           {on(1, 16): 0.4, on(1, 23): 0.4, on(1, 30): 0.3}, first=FIRST_STANDING, vigour=0.8,
           state=(FIRST, 0.12, 0.016, 0.01, 40.0))


if __name__ == "__main__":
    main()
