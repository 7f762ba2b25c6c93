"""Writes tests/reference/boundaries/: the same invented ground as GeoJSON, shapefiles, KML and task data, made by libraries that the
program does not use, and its areas by GeographicLib.

    pip install pyshp==3.1.6 simplekml==1.3.6 fastkml==1.4.0 geojson==3.3.0 shapely==2.2.0 pyproj==3.7.2 isoxml==0.0.4
    python boundaries.py

areas.csv holds what each piece measures: pyproj's Geod is GeographicLib's C++, on the ellipsoid of WGS 84.
"""

import csv
import io
import pathlib
import zipfile

import fastkml
import geojson
import geojson.geometry
import shapefile
import shapely
import shapely.geometry as sg
import simplekml
from isoxml.converter.shapely_geom import ShapelyConverterV4
from isoxml.models.base import v4 as iso
from isoxml.util.isoxml_io import isoxml_to_text
from pyproj import CRS, Geod, Transformer

OUT = pathlib.Path(__file__).parent.parent / "reference" / "boundaries"
OUT.mkdir(exist_ok=True)

# Invented ground near 41.2 N, 96.4 W; seven digits are a centimetre.
FIELDS = {
    "Mill field": sg.Polygon([(-96.41, 41.2), (-96.4031234, 41.2001), (-96.4029, 41.2049321), (-96.4099, 41.205)]),
    "Ridge, north": sg.Polygon(
        [(-96.40, 41.2), (-96.39, 41.2), (-96.39, 41.2072), (-96.40, 41.2072)],
        [[(-96.396, 41.203), (-96.396, 41.204), (-96.394, 41.204), (-96.394, 41.203)]],
    ),
    "Två ängar": sg.MultiPolygon(
        [
            sg.Polygon([(-96.42, 41.21), (-96.418, 41.21), (-96.418, 41.212), (-96.42, 41.212)]),
            sg.Polygon(
                [(-96.416, 41.21), (-96.412, 41.21), (-96.412, 41.213), (-96.416, 41.213)],
                [[(-96.415, 41.211), (-96.415, 41.212), (-96.414, 41.212), (-96.414, 41.211)]],
            ),
        ]
    ),
}
CROPS = {"Mill field": "soybean", "Ridge, north": "corn", "Två ängar": "oats"}
CREEK = sg.LineString([(-96.412, 41.198), (-96.408, 41.1985), (-96.40, 41.1979)])
WELL = sg.Point(-96.4052, 41.2061)

GEOD = Geod(ellps="WGS84")


def area(shape):
    if shape.geom_type == "MultiPolygon":
        return sum(area(part) for part in shape.geoms)
    ring = lambda points: abs(GEOD.polygon_area_perimeter(*zip(*points))[0])
    return ring(shape.exterior.coords) - sum(ring(hole.coords) for hole in shape.interiors)


with open(OUT / "areas.csv", "w", newline="", encoding="utf-8") as file:
    table = csv.writer(file, lineterminator="\n")
    file.write("# Made by tests/scripts/boundaries.py with pyproj 3.7.2 (GeographicLib).\n")
    table.writerow(["name", "crop", "square_metres"])
    for name, shape in FIELDS.items():
        table.writerow([name, CROPS[name], repr(area(shape))])


def oriented(shape):
    """Outer rings against the clock, as RFC 7946 has it."""
    if shape.geom_type == "MultiPolygon":
        return sg.MultiPolygon([oriented(part) for part in shape.geoms])
    return sg.polygon.orient(shape, 1.0)


# GeoJSON, by geojson and shapely; it would round to six digits.
geojson.geometry.DEFAULT_PRECISION = 15
features = [geojson.Feature(geometry=sg.mapping(oriented(s)), properties={"name": n, "crop": CROPS[n]}) for n, s in FIELDS.items()]
features.append(geojson.Feature(geometry=sg.mapping(CREEK), properties={"name": "Mill creek", "kind": "water"}))
features.append(geojson.Feature(geometry=sg.mapping(WELL), properties={"name": "Yard well", "kind": "well"}))
(OUT / "fields.geojson").write_text(geojson.dumps(geojson.FeatureCollection(features), indent=1, ensure_ascii=False), encoding="utf-8")


# Shapefiles, by pyshp; the points of projected ones by pyproj.
def write_shapefile(name, epsg, encoding="utf-8", cpg=True, prj=True):
    to = Transformer.from_crs(4326, epsg, always_xy=True).transform if epsg != 4326 else lambda x, y: (x, y)
    # No shift of datums: what NAD83 says is taken as WGS 84 says it, as the program does.
    if epsg not in (4326, 3857, 32614):
        base = CRS(epsg).geodetic_crs
        to = Transformer.from_crs(base, epsg, always_xy=True).transform
    shp, shx, dbf = io.BytesIO(), io.BytesIO(), io.BytesIO()
    with shapefile.Writer(shp=shp, shx=shx, dbf=dbf, shapeType=shapefile.POLYGON, encoding=encoding) as writer:
        writer.field("FIELD_NAME", "C", 40)
        writer.field("CROP", "C", 20)
        writer.field("ACRES", "N", 12, 4)
        for field, shape in FIELDS.items():
            turned = shapely.transform(shape, lambda at: [to(x, y) for x, y in at])
            parts = turned.geoms if turned.geom_type == "MultiPolygon" else [turned]
            rings = []
            for part in parts:
                # With the clock outside, against it inside.
                part = sg.polygon.orient(part, -1.0)
                rings.append(list(part.exterior.coords))
                rings.extend(list(hole.coords) for hole in part.interiors)
            writer.poly(rings)
            writer.record(field, CROPS[field], area(shape) / 4046.8564224)
    files = {"shp": shp.getvalue(), "shx": shx.getvalue(), "dbf": dbf.getvalue()}
    if cpg:
        files["cpg"] = {"utf-8": b"UTF-8", "cp1252": b"1252"}[encoding]
    if prj:
        files["prj"] = CRS(epsg).to_wkt("WKT1_ESRI").encode()
    with zipfile.ZipFile(OUT / f"{name}.zip", "w", zipfile.ZIP_DEFLATED) as packed:
        for ending, content in files.items():
            packed.writestr(zipfile.ZipInfo(f"{name}.{ending}", (2031, 1, 1, 0, 0, 0)), content, zipfile.ZIP_DEFLATED)
    return files


for ending, content in write_shapefile("wgs84", 4326).items():
    (OUT / f"wgs84.{ending}").write_bytes(content)
write_shapefile("cp1252", 4326, "cp1252", cpg=False)
write_shapefile("no_prj", 4326, prj=False)
write_shapefile("utm_no_prj", 32614, prj=False)
write_shapefile("utm", 32614)
write_shapefile("web", 3857)
write_shapefile("nad83", 4269)
write_shapefile("etrs89", 4258)
# Iowa North in feet is a conic, which is refused; Missouri West is a transverse Mercator whose origin is not on the equator.
write_shapefile("conic", 3417)
write_shapefile("missouri", 26998)

# KML by simplekml, KMZ by simplekml, and KML with typed data and namespaces by fastkml.
kml = simplekml.Kml(name="Larkspur Bend (demo)")
for name, shape in FIELDS.items():
    parts = shape.geoms if shape.geom_type == "MultiPolygon" else [shape]
    to = kml.newmultigeometry(name=name) if len(parts) > 1 else kml
    for part in parts:
        polygon = to.newpolygon(**({} if to is not kml else {"name": name}))
        polygon.outerboundaryis = list(part.exterior.coords)
        polygon.innerboundaryis = [list(hole.coords) for hole in part.interiors]
        target = to if to is not kml else polygon
    target.extendeddata.newdata("crop", CROPS[name])
kml.newlinestring(name="Mill creek", coords=list(CREEK.coords))
kml.newpoint(name="Yard well", coords=[WELL.coords[0]])
kml.save(str(OUT / "simple.kml"))
kml.savekmz(str(OUT / "simple.kmz"))

folder = fastkml.Folder(name="Fields")
for name, shape in FIELDS.items():
    data = fastkml.ExtendedData(elements=[fastkml.Data(name="crop", value=CROPS[name])])
    folder.append(fastkml.Placemark(name=name, geometry=oriented(shape), extended_data=data))
document = fastkml.KML()
document.append(folder)
(OUT / "fast.kml").write_text(document.to_string(prettyprint=False), encoding="utf-8")

# Task data, by isoxml: in one file, and with its fields in a file of their own.
converter = ShapelyConverterV4()
task_data = iso.Iso11783TaskData(
    version_minor=iso.Iso11783TaskDataVersionMinor.VALUE_2,
    management_software_manufacturer="isoxml",
    management_software_version="0.0.4",
    data_transfer_origin=iso.Iso11783TaskDataDataTransferOrigin.FMIS,
)
for number, (name, shape) in enumerate(FIELDS.items(), 1):
    task_data.crop_types.append(iso.CropType(id=f"CTP{number}", designator=CROPS[name]))
    field = iso.Partfield(id=f"PFD{number}", designator=name, area=round(area(shape)), crop_type_id_ref=f"CTP{number}")
    for part in shape.geoms if shape.geom_type == "MultiPolygon" else [shape]:
        field.polygons.append(converter.to_iso_polygon(part, iso.PolygonType.PartfieldBoundary))
    task_data.partfields.append(field)
first = task_data.partfields[0]
first.points.append(converter.to_iso_point(sg.Point(-96.4099, 41.2025), iso.PointType.FieldAccess, designator="West gate"))
pond = sg.Polygon([(-96.406, 41.202), (-96.405, 41.202), (-96.405, 41.2025), (-96.406, 41.2025)])
first.polygons.append(converter.to_iso_polygon(pond, iso.PolygonType.WaterSurface, designator="Pond"))
(OUT / "TASKDATA.XML").write_text(isoxml_to_text(task_data), encoding="utf-8")

fields = iso.ExternalFileContents(partfields=task_data.partfields)
task_data.partfields = []
task_data.external_file_references.append(
    iso.ExternalFileReference(filename="PFD00001", filetype=iso.ExternalFileReferenceType.XML)
)
with zipfile.ZipFile(OUT / "taskdata.zip", "w", zipfile.ZIP_DEFLATED) as packed:
    for name, content in [("TASKDATA.XML", task_data), ("PFD00001.XML", fields)]:
        packed.writestr(zipfile.ZipInfo(f"TASKDATA/{name}", (2031, 1, 1, 0, 0, 0)), isoxml_to_text(content), zipfile.ZIP_DEFLATED)
