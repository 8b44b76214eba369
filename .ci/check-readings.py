#!/usr/bin/env python3
"""Works the demo's survey and drilled holes out again, apart from the program, with numpy alone.

check-readings.py SURVEY.toml SURVEY.json READINGS.toml JOB.toml DRILLED.json

The .json files are what the program says with --json. Least squares by numerical derivatives; the
plate's slack by trying turns and shifts on ever finer grids. Differences past the limits end with 1.
"""
import json
import sys
import tomllib

import numpy as np

PLACE_MM = 1e-3  # of two solutions of the same equations, one with numerical derivatives
SD_SHARE = 1e-3
SLACK_MM = 2e-3  # of the finest grid


def values(x):
    return x if isinstance(x, list) else [x]


def solve(f, observed, sd, x):
    """Gauss-Newton with central differences; returns the unknowns and their covariance."""
    for _ in range(60):
        jac = np.empty((len(observed), len(x)))
        for k in range(len(x)):
            step = np.zeros(len(x))
            step[k] = 1e-4
            jac[:, k] = (f(x + step) - f(x - step)) / 2e-4
        weighted = jac / sd[:, None]
        move, *_ = np.linalg.lstsq(weighted, (observed - f(x)) / sd, rcond=None)
        x = x + move
        if np.max(np.abs(move)) < 1e-9:
            break
    return x, np.linalg.inv(weighted.T @ weighted)


def mean(entry, key, uncertainty):
    v = values(entry[key])
    return float(np.mean(v)), entry.get("uncertainty", uncertainty) / np.sqrt(len(v))


def survey(path, said):
    s = tomllib.load(open(path, "rb"))
    uncertainty = s["uncertainty"]
    known, names, start = {}, [], []
    for station in s["station"]:
        if "at" in station:
            known[station["name"]] = np.array(station["at"])
        else:
            names.append(station["name"])
            start.append([-150.0, 0.0, 800.0])
    for side in s["sides"]:
        for plot in s[side]["floor"]:
            names.append(side + "." + plot["point"])
            up = [h for h in s[side]["height"] if h["point"] == plot["point"]]
            first = np.mean(np.atleast_2d(plot["at"]), axis=0)
            sign = 1 if side == "left" else -1
            start.append([first[0], sign * first[1], float(np.mean(values(up[0]["up"])))])
    index = {n: i for i, n in enumerate(names)}

    def place(x, name):
        return known[name] if name in known else x[3 * index[name] : 3 * index[name] + 3]

    rows, observed, sd = [], [], []

    def add(row, value, deviation):
        rows.append(row)
        observed.append(value)
        sd.append(deviation)

    for side in s["sides"]:
        sign = 1 if side == "left" else -1

        def name(n, side=side):
            return n if n in known or n in index else side + "." + n

        for plot in s[side]["floor"]:
            at = np.atleast_2d(plot["at"])
            deviation = plot.get("uncertainty", uncertainty["floor"]) / np.sqrt(len(at))
            for axis in (0, 1):
                add(
                    lambda x, n=name(plot["point"]), a=axis, g=sign: place(x, n)[a] * (g if a else 1),
                    float(np.mean(at[:, axis])),
                    deviation,
                )
        for h in s[side]["height"]:
            add(lambda x, n=name(h["point"]): place(x, n)[2], *mean(h, "up", uncertainty["height"]))
        for t in s[side]["tape"]:
            add(
                lambda x, a=name(t["from"]), b=name(t["to"]): np.linalg.norm(place(x, a) - place(x, b)),
                *mean(t, "length", uncertainty["tape"]),
            )
    x, covariance = solve(
        lambda x: np.array([r(x) for r in rows]), np.array(observed), np.array(sd), np.ravel(start)
    )
    worst = worst_sd = 0.0
    for side in s["sides"]:
        for point in said["sides"][side]["points"]:
            i = 3 * index[side + "." + point["name"]]
            mine = x[i : i + 3] * ([1, 1, 1] if side == "left" else [1, -1, 1])
            worst = max(worst, np.max(np.abs(mine - point["at"])))
            mine_sd = np.sqrt(np.diag(covariance)[i : i + 3])
            worst_sd = max(worst_sd, np.max(np.abs(np.array(point["plus_minus"]) / mine_sd - 1)))
    report("survey, points of both sides", worst, PLACE_MM, "mm")
    report("survey, their +/-", worst_sd, SD_SHARE, "of itself")


def drilled(path, job, said):
    r, j = tomllib.load(open(path, "rb")), tomllib.load(open(job, "rb"))
    uncertainty = r["uncertainty"]
    for side in ("left", "right"):
        holes = [h["name"] for h in r[side]["hole"]]
        own = j.get(side, {}).get("tower", {}).get("landmark", j["tower"]["landmark"])
        marks = [m["name"] for m in own]
        names = holes + marks
        index = {n: i for i, n in enumerate(names)}
        planned = {h["name"]: h["planned"] for h in said["sides"][side]["holes"]}
        places = [[planned[n]["fore"], planned[n]["in"]] for n in holes] + [m["at"] for m in own]
        sizes = [float(np.mean(values(h["diameter"]))) for h in r[side]["hole"]]
        sizes += [m["diameter"] for m in own]
        n = len(names)
        rows, observed, sd = [], [], []

        def add(row, value, deviation):
            rows.append(row)
            observed.append(value)
            sd.append(deviation)

        for h in r[side]["hole"]:
            add(lambda x, i=index[h["name"]]: x[2 * n + i], *mean(h, "diameter", uncertainty["caliper"]))
        for m in own:
            i = index[m["name"]]
            for axis in (0, 1):
                add(lambda x, i=i, a=axis: x[2 * i + a], m["at"][axis], uncertainty["landmark"])
            add(lambda x, i=i: x[2 * n + i], m["diameter"], uncertainty["caliper"])
        for span in r[side]["span"]:
            key, radii = next(
                (k, g) for k, g in (("inside", -1), ("outside", 1), ("centres", 0)) if k in span
            )
            add(
                lambda x, a=index[span["from"]], b=index[span["to"]], g=radii: np.hypot(
                    x[2 * a] - x[2 * b], x[2 * a + 1] - x[2 * b + 1]
                )
                + g * (x[2 * n + a] + x[2 * n + b]) / 2,
                *mean(span, key, uncertainty["caliper"]),
            )
        x, covariance = solve(
            lambda x: np.array([row(x) for row in rows]),
            np.array(observed),
            np.array(sd),
            np.concatenate([np.ravel(places), sizes]),
        )
        turn = np.radians(uncertainty["line"])
        worst = worst_sd = 0.0
        for h in said["sides"][side]["holes"]:
            i = index[h["name"]]
            found = np.array([h["found"]["fore"], h["found"]["in"]])
            worst = max(worst, np.max(np.abs(found - x[2 * i : 2 * i + 2])))
            shared = uncertainty["centre"] ** 2 + (turn * np.array([x[2 * i + 1], x[2 * i]])) ** 2
            mine = np.sqrt(np.diag(covariance)[2 * i : 2 * i + 2] + shared)
            stated = np.array([h["plus_minus"]["fore"], h["plus_minus"]["in"]])
            worst_sd = max(worst_sd, np.max(np.abs(stated / mine - 1)))
        report(side + ", drilled holes", worst, PLACE_MM, "mm")
        report(side + ", their +/-", worst_sd, SD_SHARE, "of itself")
        k = len(holes)
        at = x[: 2 * k].reshape(k, 2)
        plan = np.array(places[:k])
        bolt = {"M6": 6.0, "M8": 8.0, "M10": 10.0}
        thread = {b["name"]: bolt[b["thread"]] for b in j["plate"]["bolts"]}
        drawn = {h["name"]: h["planned_diameter"] for h in said["sides"][side]["holes"]}
        play = np.array([(x[2 * n + i] + drawn[m]) / 2 - thread[m] for i, m in enumerate(holes)])
        report(
            side + ", the plate's slack",
            abs(slack(at, plan, play) - said["sides"][side]["fit"]["slack"]),
            SLACK_MM,
            "mm",
        )


def slack(at, plan, play):
    centre, width = np.zeros(3), np.array([0.02, 2.0, 2.0])
    best = -np.inf
    for _ in range(14):
        axes = [np.linspace(c - w, c + w, 17) for c, w in zip(centre, width)]
        q, u, v = np.meshgrid(*axes, indexing="ij")
        least = np.full(q.shape, np.inf)
        for h, p, r in zip(at, plan, play):
            px = np.cos(q) * p[0] - np.sin(q) * p[1] + u
            py = np.sin(q) * p[0] + np.cos(q) * p[1] + v
            least = np.minimum(least, r - np.hypot(h[0] - px, h[1] - py))
        k = np.unravel_index(np.argmax(least), least.shape)
        best = max(best, least[k])
        centre, width = np.array([q[k], u[k], v[k]]), width / 2
    return best


def report(what, figure, limit, unit):
    ok = figure <= limit
    print(f"{'ok' if ok else 'FAILED'}, {what}: {figure:.2g} {unit}, limit {limit:g}")
    if not ok:
        global bad
        bad = True


bad = False
survey(sys.argv[1], json.load(open(sys.argv[2])))
drilled(sys.argv[3], sys.argv[4], json.load(open(sys.argv[5])))
sys.exit(bad)
