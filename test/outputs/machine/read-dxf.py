"""Reads DXF files by ezdxf and prints, as JSON for each, what the drawing holds: lines, arcs, and points along ellipses."""

import json
import math
import sys

import ezdxf


def piece(entity):
    kind = entity.dxftype()
    if kind == "LINE":
        return [{"from": list(entity.dxf.start)[:2], "to": list(entity.dxf.end)[:2]}]
    if kind == "ARC":
        sweep = math.radians((entity.dxf.end_angle - entity.dxf.start_angle) % 360)
        start, end = list(entity.start_point)[:2], list(entity.end_point)[:2]
        return [{"from": start, "to": end, "centre": list(entity.dxf.center)[:2], "sweep": sweep}]
    if kind == "ELLIPSE":
        low, high = entity.dxf.start_param, entity.dxf.end_param
        count = max(2, math.ceil(abs(high - low) * 150))
        params = [low + (high - low) * step / count for step in range(count + 1)]
        points = [list(point)[:2] for point in entity.vertices(params)]
        return [{"from": a, "to": b} for a, b in zip(points, points[1:])]
    if kind == "LWPOLYLINE":
        corners = list(entity.get_points("xyb"))
        if entity.closed:
            corners.append(corners[0])
        made = []
        for (x, y, bulge), (x2, y2, _) in zip(corners, corners[1:]):
            found = {"from": [x, y], "to": [x2, y2]}
            if bulge:
                centre, _, _, _ = ezdxf.math.bulge_to_arc((x, y), (x2, y2), bulge)
                found |= {"centre": list(centre)[:2], "sweep": 4 * math.atan(bulge)}
            made.append(found)
        return made
    raise ValueError(f"an entity {kind}")


def drawing(path):
    document = ezdxf.readfile(path)
    audit = document.audit()
    return {
        "release": document.dxfversion,
        "errors": [str(error.message) for error in [*audit.errors, *audit.fixes]],
        "units": document.header["$INSUNITS"],
        "metric": document.header["$MEASUREMENT"],
        "extent": [list(document.header[name])[:2] for name in ("$EXTMIN", "$EXTMAX")],
        "layers": [layer.dxf.name for layer in document.layers],
        "entities": [
            {"kind": entity.dxftype(), "layer": entity.dxf.layer, "handle": entity.dxf.handle, "pieces": piece(entity)}
            for entity in document.modelspace()
        ],
    }


print(json.dumps([drawing(path) for path in sys.argv[1:]]))
