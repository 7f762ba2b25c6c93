"""Makes tests/reference/buffers.csv: strips between a field and what lies beside it, with general libraries.

Written for shapely 2.2.0 (GEOS), pyproj 3.7.2 (PROJ) and numpy 2.4.6:  python3 buffers.py > ../reference/buffers.csv

Each field is laid flat by PROJ's azimuthal equidistant projection on the WGS 84 ellipsoid about its middle. All round a strip is the
field cut with GEOS's buffer of 256 segments a quarter. Down the wind alone it is the ground from which some direction within 45
degrees of down the wind comes to the thing within the width; that is asked of random points directly, and must agree with the sum of
the thing and a sector up the wind, the area of which is told.
"""

import csv
import math
import sys

import numpy as np
from pyproj import Geod, Transformer
from shapely import affinity
from shapely.geometry import LineString, MultiLineString, MultiPoint, MultiPolygon, Point, Polygon
from shapely.ops import transform, unary_union

SEED = 20261128
FAN = 45.0
rng = np.random.default_rng(SEED)
geod = Geod(ellps="WGS84")

PLACES = [(-96.4, 41.2), (10.1, 54.3), (149.2, -33.5), (36.8, 0.01), (179.999, -17.5), (24.0, 66.5), (-61.0, -31.0)]


def star(x, y, least, most, corners):
    """A ring whose corners lie at growing angles: concave, and never across itself."""
    angles = np.sort(rng.uniform(0, 2 * math.pi, corners))
    reach = rng.uniform(least, most, corners)
    return [(x + r * math.cos(a), y + r * math.sin(a)) for a, r in zip(angles, reach)]


def field():
    size = rng.uniform(150, 900)
    outer = Polygon(star(0, 0, 0.45 * size, size, int(rng.integers(7, 40))))
    holes = []
    for _ in range(int(rng.integers(0, 3))):
        at = rng.uniform(-0.3 * size, 0.3 * size, 2)
        hole = Polygon(star(at[0], at[1], 5, 0.1 * size, int(rng.integers(4, 9))))
        if outer.buffer(-2).contains(hole) and not any(Polygon(h).intersects(hole.buffer(2)) for h in holes):
            holes.append(list(hole.exterior.coords))
    shape = Polygon(outer.exterior.coords, holes)
    return (shape, size) if shape.is_valid else field()


def creek(size):
    at, way = rng.uniform(-1.3 * size, 1.3 * size, 2), rng.uniform(0, 2 * math.pi)
    points = [tuple(at)]
    for _ in range(int(rng.integers(2, 30))):
        way += rng.normal(0, 0.5)
        step = rng.uniform(10, 0.3 * size)
        at = at + step * np.array([math.cos(way), math.sin(way)])
        points.append(tuple(at))
    return LineString(points)


def thing(kind, size):
    near = lambda: rng.uniform(-1.1 * size, 1.1 * size, 2)
    if kind == "point":
        return Point(*near())
    if kind == "points":
        return MultiPoint([near() for _ in range(3)])
    if kind == "line":
        return creek(size)
    if kind == "lines":
        return MultiLineString([creek(size), creek(size)])
    at = near()
    one = Polygon(star(at[0], at[1], 10, 0.35 * size, int(rng.integers(4, 15))))
    if kind == "polygon":
        return one
    other = affinity.translate(one, 0.9 * size, -0.4 * size)
    return MultiPolygon([one, other]) if one.disjoint(other) else one


def sector(x, y, towards, width):
    """The ground within the width of a point, in directions within the fan of one; a bearing in degrees."""
    rim = [math.radians(towards - FAN + 2 * FAN * i / 720) for i in range(721)]
    return Polygon([(x, y)] + [(x + width * math.sin(a), y + width * math.cos(a)) for a in rim])


def pieces(shape):
    if hasattr(shape, "geoms"):
        return [piece for one in shape.geoms for piece in pieces(one)]
    if isinstance(shape, Point):
        return [shape]
    if isinstance(shape, Polygon):
        return [piece for ring in (shape.exterior, *shape.interiors) for piece in pieces(LineString(ring.coords))]
    points = list(shape.coords)
    return [LineString(pair) for pair in zip(points, points[1:])]


def up_the_wind(shape, wind_from, width):
    zones = []
    for piece in pieces(shape):
        ends = [sector(x, y, wind_from, width) for x, y in piece.coords]
        zones.append(unary_union(ends).convex_hull)
    return unary_union(zones + ([shape] if shape.area > 0 else []))


def rounded(shape, to_globe):
    return transform(lambda x, y: tuple(np.round(part, 8) for part in to_globe(x, y)), shape)


def main():
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["case", "kind", "field", "thing", "width_m", "wind_from", "field_m2", "strip_m2", "edge_m", "distance_m"])
    kinds = ["point", "line", "polygon", "points", "lines", "polygons"]
    case, bare = 0, 0
    while case < 84:
        lon, lat = PLACES[case % len(PLACES)]
        kind = kinds[case % len(kinds)]
        aeqd = f"+proj=aeqd +lat_0={lat} +lon_0={lon} +ellps=WGS84"
        to_globe = Transformer.from_crs(aeqd, "EPSG:4326", always_xy=True).transform
        to_plane = Transformer.from_crs("EPSG:4326", aeqd, always_xy=True).transform
        drawn, size = field()
        beside = thing(kind, size)
        globe, what = rounded(drawn, to_globe), rounded(beside, to_globe)
        width = round(float(rng.uniform(6, 140)), 1)
        wind = "" if case % 2 == 0 else round(float(rng.uniform(0, 360)), 1)
        # As it is written, so that rounding is in both.
        flat, other = transform(to_plane, globe), transform(to_plane, what)
        if not (flat.is_valid and other.is_valid):
            continue
        zone = other.buffer(width, quad_segs=256) if wind == "" else up_the_wind(other, wind, width)
        strip = flat.intersection(zone)
        if strip.area < 50 and bare >= 8:
            continue
        bare += strip.area < 50
        if wind != "":
            low_x, low_y, high_x, high_y = flat.bounds
            for x, y in rng.uniform((low_x, low_y), (high_x, high_y), (200, 2)):
                point = Point(x, y)
                if zone.boundary.distance(point) > 0.01 * width:
                    reaches = sector(x, y, wind + 180.0, width).intersects(other)
                    assert reaches == zone.contains(point), (case, x, y)
        ring = lambda ring: abs(geod.geometry_area_perimeter(Polygon(ring))[0])
        area = ring(globe.exterior) - sum(ring(hole) for hole in globe.interiors)
        edge = zone.intersection(flat.boundary).length
        out.writerow([
            case, kind, globe.wkt, what.wkt, width, wind, f"{area:.2f}", f"{strip.area:.2f}", f"{edge:.2f}",
            f"{flat.distance(other):.3f}",
        ])
        case += 1


main()
