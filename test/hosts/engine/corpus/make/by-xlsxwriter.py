"""python3 by-xlsxwriter.py: by-xlsxwriter.xlsx and by-xlsxwriter.xlsm, with XlsxWriter (BSD-2-Clause; Debian: python3-xlsxwriter)."""

import base64
import datetime
import io
import pathlib

import xlsxwriter

FOLDER = pathlib.Path(__file__).resolve().parent.parent
# One grey pixel.
PIXEL = base64.b64decode(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
)
TRIALS = [[20, 0.16, "held"], [10, 0.2, "tripped"], [30, 0.1, "tripped"], ["x", 0.2, "held"], [25, 0.15, "tripped"]]
MADE = {"created": datetime.datetime(2024, 1, 1)}


def log(book, sheet):
    """A table with trials and formulas of every kind beside it; the values are old on purpose."""
    sheet.add_table("A1:D6", {"name": "Trials", "columns": [
        {"header": "current"}, {"header": "drop"}, {"header": "outcome"},
        {"header": "twice", "formula": "=Trials[@[current]]*2"},
    ], "data": TRIALS})
    sheet.write_dynamic_array_formula("F2:F4", "=_xldudf_BIMETAL_CONTACT_WATTS(A2:A6,B2:B6)", None, 1)
    sheet.write_dynamic_array_formula("H2:I2", '=_xldudf_bimetal_trip_range(51,20,"C")', None, 9)
    sheet.write_dynamic_array_formula("H3:H3", "=SUM(IFERROR(_xlfn.ANCHORARRAY(F2),0))", None, 0)
    sheet.write_formula("H4", "=BIMETAL.CONTACT.WATTS(A2,B2)", None, 0)
    sheet.write_formula("H5", "=bimetal.contact.watts(Trials[current],Trials[drop])", None, 0)
    sheet.write_array_formula("K2:L4", "{=A2:A3*2}", None, 0)
    sheet.write_array_formula("K6:K6", "{=SUM(_xldudf_BIMETAL_CONTACT_WATTS(A2:A4,B2:B4))}", None, 0)
    sheet.write_formula("K7", "=SUM(Trials[drop])", None, 0)
    sheet.write_formula("K8", "=Rated*2", None, 0)
    sheet.write_formula("K9", "=_xlfn.XLOOKUP(30,A2:A6,C2:C6)", None, "")
    sheet.write_formula("K10", "='Old bench'!A1&\" & <more>\"", None, "")


with xlsxwriter.Workbook(FOLDER / "by-xlsxwriter.xlsx") as book:
    book.set_properties(MADE)
    bold = book.add_format({"bold": True, "bg_color": "#DDEEFF"})
    sheet = book.add_worksheet("Log")
    log(book, sheet)
    sheet.conditional_format("F2:F20", {"type": "3_color_scale"})
    sheet.conditional_format("A2:A6", {"type": "cell", "criteria": ">", "value": 15, "format": bold})
    sheet.conditional_format("B2:B6", {"type": "data_bar", "data_bar_2010": True})
    sheet.data_validation("C2:C20", {"validate": "list", "source": ["held", "tripped"]})
    sheet.write_comment("A2", "measured twice", {"author": "Bench"})
    sheet.insert_image("N2", "pixel.png", {"image_data": io.BytesIO(PIXEL)})
    sheet.add_sparkline("M2", {"range": "Log!A2:A6"})
    sheet.write_rich_string("A9", "a ", bold, "bold", " word")
    sheet.write_url("A10", "https://example.org/", string="a link")
    chart = book.add_chart({"type": "scatter"})
    chart.add_series({"categories": "=Log!$A$2:$A$6", "values": "=Log!$F$2:$F$6"})
    sheet.insert_chart("N5", chart)
    sheet.freeze_panes(1, 0)
    old = book.add_worksheet("Old bench")
    old.write("A1", "old")
    old.hide()
    only = book.add_chart({"type": "line"})
    only.add_series({"values": "=Log!$B$2:$B$6"})
    book.add_chartsheet("Chart").set_chart(only)
    book.define_name("Rated", "=Log!$A$2")
    book.define_name("'Old bench'!Rated", "='Old bench'!$A$1")

with xlsxwriter.Workbook(FOLDER / "by-xlsxwriter.xlsm") as book:
    book.set_properties(MADE)
    sheet = book.add_worksheet("Log")
    log(book, sheet)
    book.add_worksheet("Old bench").write("A1", "old")
    book.define_name("Rated", "=Log!$A$2")
    # No real macros: bytes that only stand where they would.
    book.add_vba_project(io.BytesIO(bytes(range(256)) * 4), is_stream=True)
    sheet.insert_button("N2", {"macro": "Nothing", "caption": "does nothing"})
    sheet.protect("bench")
    sheet.set_header("&CFernhollow &[Picture]", {"image_center": "pixel.png", "image_data_center": io.BytesIO(PIXEL)})
