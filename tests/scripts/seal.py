"""Writes tests/reference/seal.json: a signed record with its amendments, sealed by Python's hashlib and rfc8785 0.1.4
(pip install rfc8785==0.1.4); each seal is reckoned a second time over the canonical JSON of jcs 0.2.1 (pip install jcs==0.2.1).

    python seal.py > ../reference/seal.json

What was signed and each amendment stand below as they were typed. The record after each amendment is made from the one before by
the changes alone, with JSON Pointers read by jsonpointer 3.0.0 (pip install jsonpointer==3.0.0).
"""

import copy
import hashlib
import json

import jcs
import rfc8785
from jsonpointer import JsonPointer

SIGNED = {
    "pass": "2031-06-12-corn",
    "name": "Corn, second post – “höhe 5” 😀",
    "date": "2031-06-12",
    "start": "05:40:00",
    "fields": {
        "mill/field": {"name": "Mill field", "area": "74.6 ac", "crop": "corn", "stage": "V6"},
        "east~side": {"name": "East side", "area": "0,5 ha"},
    },
    "volume": "1119 gal",
    "loads": 2,
    "lines": [
        {
            "product": "glyphosate",
            "name": "Glyphosate 540 SL (demo)",
            "amount": "12.8 gal",
            "entry": 12,
            "actives": [{"name": "glyphosate", "group": "9", "basis": "AcidEquivalent", "mass": "57.7 lb"}],
        },
        {"product": "oil", "name": "Crop oil (demo)", "amount": "9 gal", "restricted": True},
        {"product": "ams", "name": "Ammonium sulfate (demo)", "amount": "190 lb"},
    ],
    "weeds": ["waterhemp", "giant foxtail"],
    "wind": "6 mph",
    "readings": [{"at": "06:30:00", "wind": "7 mph"}, {"at": "08:10:00", "wind": "9 mph", "wind_from": "NW"}],
    "operator": "A. Demo",
    "more": {"permit": "none\nneeded"},
    "note": "tab\there, \"quoted\", back\\slash, \u0080, \ufb33",
}

BY, AT = "A. Demo", "2031-06-12T20:14:00"

AMENDMENTS = [
    {
        "by": "A. Demo",
        "at": "2031-06-13T07:02:00",
        "why": "the boom was shut on the headland",
        "changes": [
            {"what": "/fields/mill~1field/area", "was": {"Text": "74.6 ac"}, "is": {"Text": "70 ac"}},
            {"what": "/loads", "was": {"Json": "2"}, "is": {"Json": "3"}},
        ],
    },
    {
        "by": "B. Demo",
        "at": "2031-06-20T18:30:05",
        "why": "the oil was not put in; a reading was forgotten",
        "changes": [
            {
                "what": "/lines/1",
                "was": {"Json": '{"amount":"9 gal","name":"Crop oil (demo)","product":"oil","restricted":true}'},
            },
            {"what": "/weeds/1", "was": {"Text": "giant foxtail"}},
            {"what": "/readings/1", "is": {"Json": '{"at":"07:20:00","wind":"8 mph"}'}},
            {"what": "/note", "was": {"Text": SIGNED["note"]}},
            {"what": "/end", "is": {"Text": "09:00:00"}},
        ],
    },
]


def seal(what):
    canonical = rfc8785.dumps(what)
    assert canonical == jcs.canonicalize(what)
    return hashlib.sha256(canonical).hexdigest()


def said(value):
    return value["Text"] if "Text" in value else json.loads(value["Json"])


def done(record, change):
    parent, part = JsonPointer(change["what"]).to_last(record)
    if isinstance(parent, list):
        if "was" in change:
            assert parent.pop(part) == said(change["was"])
        if "is" in change:
            parent.insert(part, said(change["is"]))
    else:
        if "was" in change:
            assert parent.pop(part) == said(change["was"])
        else:
            assert part not in parent
        if "is" in change:
            parent[part] = said(change["is"])


record = copy.deepcopy(SIGNED)
last = seal({"by": BY, "at": AT, "content": record})
signature = {"by": BY, "at": AT, "hash": last}
amendments = []
for amendment in AMENDMENTS:
    for change in amendment["changes"]:
        done(record, change)
    last = seal({"previous": last, **amendment, "content": record})
    amendments.append({**amendment, "hash": last})

sample = {
    "signed": {**SIGNED, "signed": signature},
    "record": {
        **record,
        "signed": signature,
        "amendments": amendments,
        "outcomes": [{"field": "mill/field", "date": "2031-07-01", "rating": "95 %"}],
    },
}
print(json.dumps(sample, indent=2, ensure_ascii=False))
