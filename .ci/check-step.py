#!/usr/bin/python3
"""Loads STEP files with a CAD kernel that is not ours and compares its figures with expected ones.

usage: check-step.py LIST

Each line of LIST names a file (beside LIST), then its volume in mm3 and its box in mm:
  FILE VOLUME MINX MINY MINZ MAXX MAXY MAXZ
Needs gmsh with OpenCASCADE (Debian and Ubuntu: python3-gmsh). Repairs that gmsh offers are off; the
kernel's own STEP reader still looks over each shape that it takes in.
"""
import os
import sys

VOLUME = 1e-6  # relative
# The kernel widens boxes by the tolerance of each shape, 1e-7 mm unless a shape needs more.
BOX_MM = 1e-5
# A mesh's chords cut corners: with 16 to the turn a disc loses 1 - sin(x)/x, x = 22.5 degrees, which
# is 2.55 per cent of it.
CHORDS = 16
MESH_VOLUME = 0.03


def faults(gmsh, path, volume, box):
    """What the kernel finds wrong with a file, and what it measured."""
    found = []
    gmsh.clear()
    gmsh.model.add("part")
    gmsh.model.occ.importShapes(path, highestDimOnly=False)
    gmsh.model.occ.synchronize()
    solids = gmsh.model.getEntities(3)
    if len(solids) != 1:
        return ["%d solids, not one" % len(solids)], {}
    surfaces = gmsh.model.getBoundary(solids, oriented=True)
    if len(surfaces) != len(gmsh.model.getEntities(2)):
        found.append("faces that do not bound the solid")
    if gmsh.model.getBoundary(surfaces, combined=True, oriented=True):
        found.append("the faces do not close")
    uses = {}
    for surface in surfaces:
        for curve in gmsh.model.getBoundary([surface], combined=False, oriented=False):
            uses[curve[1]] = uses.get(curve[1], 0) + 1
    if set(uses.values()) != {2}:
        found.append("an edge is not shared by two faces")
    mass = gmsh.model.occ.getMass(3, solids[0][1])
    off = abs(mass / volume - 1)
    if not off <= VOLUME:
        found.append("volume %.9g, not %.9g" % (mass, volume))
    seen = gmsh.model.occ.getBoundingBox(3, solids[0][1])
    box_off = max(abs(a - b) for a, b in zip(seen, box))
    if not box_off <= BOX_MM:
        found.append("box %s, not %s" % (seen, box))
    kinds = {}
    for surface in gmsh.model.getEntities(2):
        kind = gmsh.model.getType(*surface)
        kinds[kind] = kinds.get(kind, 0) + 1
    gmsh.model.mesh.generate(3)
    types, tags, _ = gmsh.model.mesh.getElements(3)
    if len(types) == 0:
        found.append("no mesh")
    meshed = sum_of_tetrahedra(gmsh)
    mesh_off = abs(meshed / volume - 1)
    if not mesh_off <= MESH_VOLUME:
        found.append("meshed volume %.9g, not %.9g" % (meshed, volume))
    return found, {
        "volume": off,
        "box": box_off,
        "mesh": mesh_off,
        "kinds": kinds,
        "tetrahedra": sum(len(t) for t in tags),
    }


def sum_of_tetrahedra(gmsh):
    """The volume of the mesh of first order, mm3."""
    tags, coordinates, _ = gmsh.model.mesh.getNodes()
    at = {tag: coordinates[3 * i : 3 * i + 3] for i, tag in enumerate(tags)}
    total = 0.0
    types, _, nodes = gmsh.model.mesh.getElements(3)
    for kind, corners in zip(types, nodes):
        if kind != 4:
            raise ValueError("an element that is not a tetrahedron")
        for i in range(0, len(corners), 4):
            p, a, b, c = (at[corner] for corner in corners[i : i + 4])
            a, b, c = ([q[k] - p[k] for k in range(3)] for q in (a, b, c))
            total += abs(
                a[0] * (b[1] * c[2] - b[2] * c[1])
                + a[1] * (b[2] * c[0] - b[0] * c[2])
                + a[2] * (b[0] * c[1] - b[1] * c[0])
            ) / 6
    return total


def main(argv):
    if len(argv) != 2:
        print(__doc__.strip(), file=sys.stderr)
        return 2
    import gmsh

    gmsh.initialize()
    options = {
        "General.Terminal": 0,
        "General.AbortOnError": 0,
        "Geometry.OCCFixDegenerated": 0,
        "Geometry.OCCFixSmallEdges": 0,
        "Geometry.OCCFixSmallFaces": 0,
        "Geometry.OCCSewFaces": 0,
        "Geometry.OCCMakeSolids": 0,
        "Mesh.CharacteristicLengthFromCurvature": 1,
        "Mesh.MinimumElementsPerTwoPi": CHORDS,
        "Mesh.CharacteristicLengthMax": 20,
    }
    for name, value in options.items():
        gmsh.option.setNumber(name, value)
    bad = 0
    with open(argv[1], encoding="utf-8") as rows:
        rows = [row.split() for row in rows if row.strip()]
    if not rows:
        print("nothing to check", file=sys.stderr)
        return 2
    for row in rows:
        path = os.path.join(os.path.dirname(argv[1]), row[0])
        figures = [float(figure) for figure in row[1:]]
        if len(figures) != 7:
            print("not a row of the list: %s" % row, file=sys.stderr)
            return 2
        try:
            found, measured = faults(gmsh, path, figures[0], figures[1:])
        except Exception as error:  # gmsh throws bare ones
            found, measured = ["%r" % error], {}
        if measured:
            kinds = ", ".join("%d %s" % (n, k) for k, n in sorted(measured["kinds"].items()))
            print(
                "%s: volume off by %.1e, box by %.1e mm, mesh of %d by %.1e; %s"
                % (
                    row[0],
                    measured["volume"],
                    measured["box"],
                    measured["tetrahedra"],
                    measured["mesh"],
                    kinds,
                )
            )
        for fault in found:
            bad += 1
            print("FAILED %s: %s" % (row[0], fault), file=sys.stderr)
    gmsh.finalize()
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
