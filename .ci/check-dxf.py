#!/usr/bin/python3
"""Looks at DXF files with ezdxf, which is not ours: check-dxf.py FILE... [--expect CSV]

Each file must load, and its audit must find no error and nothing to fix. With --expect, whose lines
are name,x,y,radius in mm, each of those circles must be there as a CIRCLE, the layer CHECK-BARS must
hold a LINE of 100 mm, both to 1e-6 mm, and a text must name the unit.
"""
import argparse
import csv
import math
import re
import sys

import ezdxf

EXACT_MM = 1e-6
BAR_MM = 100.0


def shown(entity):
    """Whether an entity is to be seen."""
    layer = entity.doc.layers.get(entity.dxf.layer)
    return not entity.dxf.invisible and layer.is_on() and not layer.is_frozen()


def expected(path):
    """Rows of the file, but for a heading and blank lines."""
    with open(path, newline="", encoding="utf-8") as lines:
        for row in csv.reader(lines):
            if row and row[1:] != ["x", "y", "radius"]:
                name, x, y, radius = row
                yield name, float(x), float(y), float(radius)


def faults(path, circles):
    """What is wrong with one file."""
    document = ezdxf.readfile(path)
    audit = document.audit()
    for entry in audit.errors:
        yield "error: " + entry.message
    for entry in audit.fixes:
        yield "to fix: " + entry.message
    if document.dxfversion == "AC1009":
        if "$INSUNITS" in document.header:
            yield "release 12 has no $INSUNITS"
    elif document.header.get("$INSUNITS") != 4 or document.header.get("$MEASUREMENT") != 1:
        yield "the unit is not the mm"
    if circles is None:
        return
    model = document.modelspace()
    found = [e for e in model.query("CIRCLE") if shown(e)]
    for name, x, y, radius in circles:
        off = min(
            (
                max(
                    math.hypot(e.dxf.center.x - x, e.dxf.center.y - y),
                    abs(e.dxf.radius - radius),
                )
                for e in found
            ),
            default=math.inf,
        )
        if not off <= EXACT_MM:
            yield f"no circle for {name}; the nearest is {off} mm off"
    bars = [e for e in model.query('LINE[layer=="CHECK-BARS"]') if shown(e)]
    if not any(abs(e.dxf.start.distance(e.dxf.end) - BAR_MM) <= EXACT_MM for e in bars):
        yield f"no line of {BAR_MM} mm on the layer CHECK-BARS"
    if not any(re.search(r"\bmm\b", e.dxf.text, re.IGNORECASE) for e in model.query("TEXT")):
        yield "no text names the unit"


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("files", nargs="+", metavar="FILE")
    parser.add_argument("--expect", metavar="CSV")
    arguments = parser.parse_args()
    circles = list(expected(arguments.expect)) if arguments.expect else None
    if circles is not None and not circles:
        sys.exit(arguments.expect + " expects nothing")
    bad = False
    for path in arguments.files:
        try:
            found = list(faults(path, circles))
        except (OSError, ezdxf.DXFError) as e:
            found = [str(e) or type(e).__name__]
        for fault in found:
            print(f"{path}: {fault}", file=sys.stderr)
        bad = bad or bool(found)
        if not found:
            count = "" if circles is None else f", {len(circles)} circles and the bar found"
            print(f"ok, {path}: nothing to fix{count}")
    sys.exit(1 if bad else 0)


main()
