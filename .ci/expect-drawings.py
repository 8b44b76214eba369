#!/usr/bin/python3
"""What the demo's drawings must hold, worked out from the job file alone: expect-drawings.py JOB DIR

Writes DIR/NAME.csv with the circles of each DXF (name,x,y,radius; from its datum) and DIR/solids.txt
with volume and box of each STEP, one line a file as check-step.py wants them. Nothing of the program
takes part: holes by the layout's formula, areas and volumes in closed form. It knows what the demo
job needs and no more: a round, handed plate with a slot of round ends, pins, a slider whose
size is assumed, jigs that are the hull of their holes.
"""
import math
import os
import sys
import tomllib

ISO_273_MEDIUM = {"M6": 6.6, "M8": 9.0, "M10": 11.0}
SLIDER_CORNER = 5.0  # what the program assumes, docs/job-file.md


def merged(shared, own):
    """Own keys over shared ones, tables key by key."""
    result = dict(shared)
    for key, value in own.items():
        both = isinstance(value, dict) and isinstance(shared.get(key), dict)
        # A shape replaces a shape.
        result[key] = merged(shared[key], value) if both and "diameter" not in value else value
    return result


def hull(points):
    """The convex hull, counter-clockwise."""
    points = sorted(set(points))

    def half(ordered):
        chain = []
        for p in ordered:
            while len(chain) > 1 and (chain[-1][0] - chain[-2][0]) * (p[1] - chain[-2][1]) <= (
                chain[-1][1] - chain[-2][1]
            ) * (p[0] - chain[-2][0]):
                chain.pop()
            chain.append(p)
        return chain[:-1]

    return half(points) + half(points[::-1])


def disc(diameter):
    return math.pi / 4 * diameter * diameter


class Job:
    def __init__(self, path):
        with open(path, "rb") as file:
            self.job = tomllib.load(file)
        self.plate = self.job["plate"]
        self.make = self.plate["make"]
        self.bolts = [(b["name"], b["at"], ISO_273_MEDIUM[b["thread"]]) for b in self.plate["bolts"]]

    def plate_circles(self, hand):
        circles = [(name, x, hand * y, d / 2) for name, (x, y), d in self.bolts]
        pins = self.make["index_holes"]
        for number, index in enumerate(self.plate["slot"]["index"], 1):
            for letter, sign in (("a", 1), ("b", -1)):
                x = self.plate["bearing"]["x"] + index
                y = hand * sign * pins["offset"]
                circles.append((f"{number}{letter}", x, y, pins["diameter"] / 2))
        return circles

    def plate_solid(self):
        t = self.plate["thickness"]
        d = self.plate["outline"]["diameter"]
        slot = self.plate["slot"]
        wide = self.plate["moving"]["diameter"] + 2 * self.plate["moving"]["clearance"]
        area = disc(d) - disc(wide) - wide * (slot["to"] - slot["from"])
        area -= sum(disc(2 * r) for _, _, _, r in self.plate_circles(1))
        return area * t, (-d / 2, -d / 2, 0, d / 2, d / 2, t)

    def slider_circles(self):
        pins = self.make["index_holes"]
        bore = self.make["bearing_bore"]["diameter"] / 2
        r = pins["diameter"] / 2
        return [("bore", 0, 0, bore), ("a", 0, pins["offset"], r), ("b", 0, -pins["offset"], r)]

    def slider_solid(self, length, width):
        t = self.plate["thickness"]
        area = length * width - (4 - math.pi) * SLIDER_CORNER**2
        area -= sum(disc(2 * r) for _, _, _, r in self.slider_circles())
        return area * t, (-length / 2, -width / 2, 0, length / 2, width / 2, t)

    def tower(self, side):
        return merged(self.job["tower"], self.job.get(side, {}).get("tower", {}))

    def tower_holes(self, side):
        """Name, x to the right, y forward, seen from above; diameter."""
        mount = self.job["mount"]
        q = math.radians(mount["rotation"])
        right = 1 if side == "left" else -1
        holes = []
        for name, (x, y), d in self.bolts:
            fore = -mount["rearward"] - x * math.sin(q) + y * math.cos(q)
            inboard = mount["inboard"] + x * math.cos(q) + y * math.sin(q)
            holes.append((name, right * inboard, fore, d))
        return holes

    def landmarks(self, side):
        right = 1 if side == "left" else -1
        return [
            (m["name"], right * m["at"][1], m["at"][0], m["diameter"])
            for m in self.tower(side)["landmark"]
        ]

    def jig_solid(self, side):
        rules = self.job["jig"]
        t = rules["thickness"]
        outside = rules["bushing"]["outside"]
        sights = self.landmarks(side)
        centres = [(x, y) for _, x, y, _ in self.tower_holes(side) + sights]
        widest = max([outside] + [d for _, _, _, d in sights])
        r = widest / 2 + rules.get("margin", 12.0)
        corners = hull(centres)
        pairs = list(zip(corners, corners[1:] + corners[:1]))
        area = sum(a[0] * b[1] - a[1] * b[0] for a, b in pairs) / 2
        area += r * sum(math.dist(a, b) for a, b in pairs) + math.pi * r * r
        area -= len(self.bolts) * disc(outside) + sum(disc(d) for _, _, _, d in sights)
        area -= disc(self.tower(side)["opening"]["diameter"])
        xs = [c[0] for c in centres]
        ys = [c[1] for c in centres]
        return area * t, (min(xs) - r, min(ys) - r, 0, max(xs) + r, max(ys) + r, t)


def main():
    job = Job(sys.argv[1])
    directory = sys.argv[2]
    circles = {
        "plate": job.plate_circles(1),
        "plate-right": job.plate_circles(-1),
        "slider": job.slider_circles(),
    }
    solids = {"plate": job.plate_solid(), "plate-right": job.plate_solid()}
    solids["slider"] = job.slider_solid(*map(float, sys.argv[3:5]))
    outside = job.job["jig"]["bushing"]["outside"]
    for side in ("left", "right"):
        marks = job.landmarks(side)
        holes = job.tower_holes(side)
        circles["tower-" + side] = [(n, x, y, d / 2) for n, x, y, d in holes + marks]
        circles["jig-" + side] = [(n, x, y, outside / 2) for n, x, y, _ in holes] + [
            (n, x, y, d / 2) for n, x, y, d in marks
        ]
        solids["jig-" + side] = job.jig_solid(side)
    for name, rows in circles.items():
        with open(os.path.join(directory, name + ".csv"), "w", encoding="utf-8") as file:
            file.writelines(f"{n},{x!r},{y!r},{r!r}\n" for n, x, y, r in rows)
    with open(os.path.join(directory, "solids.txt"), "w", encoding="utf-8") as file:
        for name, (volume, box) in solids.items():
            file.write(f"{name}.step {volume!r} {' '.join(map(repr, box))}\n")


main()
