"""python3 by-libreoffice.py: by-libreoffice.xlsx, by-libreoffice-1904.xlsx and by-libreoffice.xlsm, with LibreOffice Calc over its
own programming interface (MPL-2.0; Debian: libreoffice-calc, python3-uno)."""

import base64
import pathlib
import subprocess
import tempfile
import time

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.sheet.ConditionOperator import GREATER
from com.sun.star.sheet.DataPilotFieldOrientation import DATA, ROW
from com.sun.star.sheet.ValidationType import LIST
from com.sun.star.table import CellAddress, CellRangeAddress
from com.sun.star.awt import Rectangle, Point, Size
from com.sun.star.util import Date

FOLDER = pathlib.Path(__file__).resolve().parent.parent
# One grey pixel.
PIXEL = base64.b64decode(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
)


def prop(name, value):
    made = PropertyValue()
    made.Name, made.Value = name, value
    return made


def connect(profile):
    subprocess.Popen(["soffice", "--headless", "--norestore", f"-env:UserInstallation=file://{profile}",
                      "--accept=pipe,name=corpus;urp;"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(120):
        try:
            return resolver.resolve("uno:pipe,name=corpus;urp;StarOffice.ComponentContext")
        except Exception:
            time.sleep(0.5)
    raise RuntimeError("LibreOffice did not start.")


def fill(document, folder):
    sheets = document.Sheets
    sheets.getByIndex(0).Name = "Bench log"
    sheets.insertNewByName("Other", 1)
    sheets.insertNewByName("Put away", 2)
    log = sheets.getByName("Bench log")
    rows = [("current", "drop", "outcome"), (20, 0.16, "held"), (10, 0.2, "tripped"), (30, 0.1, "tripped"), ("x", 0.2, "held")]
    log.getCellRangeByName("A1:C5").setDataArray(tuple(rows))
    document.NamedRanges.addNewByName("rated", "$'Bench log'.$A$2", CellAddress(0, 0, 0), 0)
    log.NamedRanges.addNewByName("here", "$'Bench log'.$B$2", CellAddress(0, 0, 0), 0)
    document.DatabaseRanges.addNewByName("Trials", CellRangeAddress(0, 0, 0, 2, 4))
    formulas = {
        "E2": "=A2*B2", "E3": "=A3*B3", "E4": "=A4*B4", "E5": '=IF(ISNUMBER(A5);"n";"t")',
        "F2": "=BIMETAL.CONTACT.WATTS(A2;B2)", "F3": "=bimetal.contact.watts(A3;B3)",
        "F4": "=_xldudf_BIMETAL_CONTACT_WATTS(A4;B4)", "F5": "=BIMETAL.CONTACT.WATTS(A5;B5)",
        "G2": '=BIMETAL.TRIP.RANGE(51;20;"C")', "G3": "=rated*2", "G4": "=here+1", "G5": "=F5",
        "I2": "=SUM(A2:A4)", "I3": "=VLOOKUP(10;A2:C4;3;0)", "I4": "=1/0", "I5": "=TRUE()",
    }
    for address, formula in formulas.items():
        log.getCellRangeByName(address).Formula = formula
    log.getCellRangeByName("J2:J5").setArrayFormula("=A2:A4*2")
    log.getCellRangeByName("K2:K4").setArrayFormula("=BIMETAL.CONTACT.WATTS(A2:A4;B2:B4)")
    other = sheets.getByName("Other")
    other.getCellRangeByName("A1").Formula = "=$'Bench log'.F2*2"
    other.getCellRangeByName("A2").String = "  kept  "
    other.getCellRangeByName("A3").Formula = "=DATE(2023;3;15)+1"
    sheets.getByName("Put away").IsVisible = False
    log.Annotations.insertNew(CellAddress(0, 0, 1), "measured twice")
    log.Charts.addNewByName("Chart", Rectangle(12000, 1000, 8000, 5000), (CellRangeAddress(0, 0, 0, 1, 3),), True, False)
    (folder / "pixel.png").write_bytes(PIXEL)
    shape = document.createInstance("com.sun.star.drawing.GraphicObjectShape")
    log.DrawPage.add(shape)
    shape.GraphicURL = (folder / "pixel.png").as_uri()
    shape.setSize(Size(500, 500))
    shape.setPosition(Point(12000, 8000))
    pilots = other.DataPilotTables
    pilot = pilots.createDataPilotDescriptor()
    pilot.setSourceRange(CellRangeAddress(0, 0, 0, 2, 3))
    fields = pilot.DataPilotFields
    fields.getByIndex(2).Orientation = ROW
    fields.getByIndex(1).Orientation = DATA
    pilots.insertNewByName("Drops", CellAddress(1, 2, 5), pilot)
    words = log.getCellRangeByName("C2:C9")
    validation = words.Validation
    validation.Type = LIST
    validation.setFormula1('"held";"tripped"')
    words.Validation = validation
    styled = log.getCellRangeByName("A2:A4")
    conditions = styled.ConditionalFormat
    conditions.addNew((prop("Operator", GREATER), prop("Formula1", "15"), prop("StyleName", "Accent 1")))
    styled.ConditionalFormat = conditions
    other.protect("bench")


with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as name:
    folder = pathlib.Path(name)
    context = connect(folder / "profile")
    desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
    kinds = [("by-libreoffice.xlsx", "Calc MS Excel 2007 XML", False), ("by-libreoffice-1904.xlsx", "Calc MS Excel 2007 XML", True),
             ("by-libreoffice.xlsm", "Calc MS Excel 2007 VBA XML", False)]
    for file, kind, is1904 in kinds:
        document = desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, (prop("Hidden", True),))
        if is1904:
            document.NullDate = Date(1, 1, 1904)
        fill(document, folder)
        document.storeToURL((FOLDER / file).as_uri(), (prop("FilterName", kind),))
        document.close(False)
    try:
        desktop.terminate()
    except Exception:
        pass
