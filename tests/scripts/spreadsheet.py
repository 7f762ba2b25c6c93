#!/usr/bin/python3
"""Speaks to a spreadsheet, LibreOffice Calc without a window, over a pipe (Debian: libreoffice-calc, python3-uno).

    spreadsheet.py serve          one order a line on standard input, as JSON; one answer a line
    spreadsheet.py formulas FILE…  opens each CSV with commas, semicolons and tabs between its columns; fails where a cell is a formula

Orders of `serve`:
    {"cells": [[sheet, column, row, "=formula" or number or text], ...]}   puts them into a new workbook; sheets by number
    {"set": [sheet, column, row, value], "read": [column, row, column, row], "all": true}
                                        changes a cell and reads a block of its sheet; "all" reckons every cell anew in between
    {"save": path}                                                         keeps the workbook as .ods, to be looked at
A change is answered with {"seconds": from the change until the block is read, "pipe": to read it once more, when nothing is
left to reckon, "values": its rows}.
"""

import json
import os
import shutil
import subprocess
import sys
import tempfile
import time

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.sheet.CellFlags import FORMULA


def properties(**values):
    return tuple(PropertyValue(Name=name, Value=value) for name, value in values.items())


class Office:
    """One running office with a profile of its own."""

    def __enter__(self):
        self.profile = tempfile.mkdtemp()
        pipe = f"tankard{os.getpid()}"
        self.process = subprocess.Popen(
            ["soffice", "--headless", "--norestore", "--nologo", "--nodefault", f"--accept=pipe,name={pipe};urp;",
             f"-env:UserInstallation=file://{self.profile}"],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        here = uno.getComponentContext()
        resolver = here.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", here)
        for _ in range(240):
            try:
                self.there = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
                break
            except NoConnectException:
                time.sleep(0.25)
        else:
            raise SystemExit("the spreadsheet did not answer within a minute")
        self.desktop = self.there.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", self.there)
        return self

    def __exit__(self, *_):
        try:
            self.desktop.terminate()
        except Exception:  # It may be gone before it has answered.
            pass
        try:
            self.process.wait(20)
        except subprocess.TimeoutExpired:
            self.process.kill()
        shutil.rmtree(self.profile, ignore_errors=True)

    def open(self, url, **options):
        return self.desktop.loadComponentFromURL(url, "_blank", 0, properties(Hidden=True, **options))


def by_sheet(cells):
    sheets = {}
    for number, *cell in cells:
        sheets.setdefault(number, []).append(cell)
    return sheets


def serve(office):
    book = office.open("private:factory/scalc")
    for line in sys.stdin:
        order = json.loads(line)
        answer = {}
        if "cells" in order:
            for number, cells in by_sheet(order["cells"]).items():
                while book.Sheets.Count <= number:
                    book.Sheets.insertNewByName(f"Pass {book.Sheets.Count}", book.Sheets.Count)
                columns, rows = (1 + max(cell[at] for cell in cells) for at in (0, 1))
                block = [[""] * columns for _ in range(rows)]
                for column, row, value in cells:
                    block[row][column] = value if isinstance(value, str) else repr(value)
                # All at once: a call over the pipe for each cell takes minutes.
                place = book.Sheets.getByIndex(number).getCellRangeByPosition(0, 0, columns - 1, rows - 1)
                place.setFormulaArray(tuple(tuple(row) for row in block))
        if "set" in order:
            sheet, column, row, value = order["set"]
            sheet = book.Sheets.getByIndex(sheet)
            cell, block = sheet.getCellByPosition(column, row), sheet.getCellRangeByPosition(*order["read"])
            started = time.perf_counter()
            cell.Value = value
            if order.get("all"):
                book.calculateAll()
            values = block.getDataArray()
            ended = time.perf_counter()
            block.getDataArray()
            answer = {"seconds": ended - started, "pipe": time.perf_counter() - ended, "values": values}
        if "save" in order:
            book.storeAsURL("file://" + order["save"], properties(FilterName="calc8"))
        print(json.dumps(answer), flush=True)
    book.close(True)


def formulas(office, path):
    found = 0
    for separator in (44, 59, 9):
        for evaluate in ("false", "true"):
            # The separator, quotes, UTF-8, from the first line, columns as they come; the last says whether what looks like
            # a formula is taken for one.
            book = office.open("file://" + os.path.abspath(path), FilterName="Text - txt - csv (StarCalc)",
                               FilterOptions=f"{separator},34,76,1,,0,false,true,true,false,false,0,{evaluate}")
            sheet = book.Sheets.getByIndex(0)
            ranges = sheet.queryContentCells(FORMULA)
            used = sheet.createCursor()
            used.gotoEndOfUsedArea(False)
            columns, rows = used.RangeAddress.EndColumn + 1, used.RangeAddress.EndRow + 1
            print(f"{os.path.basename(path)}: separator {chr(separator)!r}, formulas taken {evaluate}: {columns} columns, {rows} rows, "
                  f"formulas: {ranges.RangeAddressesAsString or 'none'}")
            found += ranges.Count
            book.close(True)
    return found


def main():
    with Office() as office:
        if sys.argv[1:] == ["serve"]:
            serve(office)
        elif len(sys.argv) > 2 and sys.argv[1] == "formulas":
            sys.exit(1 if sum([formulas(office, path) for path in sys.argv[2:]]) else 0)
        else:
            sys.exit(__doc__)


main()
