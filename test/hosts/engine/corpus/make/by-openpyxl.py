"""python3 by-openpyxl.py: by-openpyxl.xlsx, with openpyxl (MIT; Debian: python3-openpyxl)."""

import datetime
import pathlib

from openpyxl import Workbook
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.formatting.rule import FormulaRule
from openpyxl.styles import Font, PatternFill
from openpyxl.utils.datetime import CALENDAR_MAC_1904
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.table import Table

FOLDER = pathlib.Path(__file__).resolve().parent.parent

book = Workbook()
book.epoch = CALENDAR_MAC_1904
book.properties.created = book.properties.modified = datetime.datetime(2024, 1, 1)
log = book.active
log.title = "Bench log"
for row in [["day", "current", "drop", "held"], [datetime.datetime(2023, 3, 15), 20, 0.16, True],
            [datetime.datetime(2023, 3, 16), 10, 0.2, False], [datetime.datetime(2023, 3, 17), 30, 0.1, True]]:
    log.append(row)
log.add_table(Table(displayName="Trials", ref="A1:D4"))
log["F2"] = "=_xldudf_BIMETAL_CONTACT_WATTS(B2:B4,C2:C4)"
log.formula_attributes["F2"] = {"t": "array", "ref": "F2:F4"}
log["G2"] = "=BIMETAL.CONTACT.WATTS(B2,C2)"
log["G3"] = "=_xlfn._xldudf_BIMETAL_CONTACT_WATTS(B3,C3)"
log["G4"] = "=SUM(Trials[current])"
log["H2"] = "=A2+1"
log["H3"] = "=YEAR(A2)"
log["H4"] = "=TODAY()-TODAY()+B2"
log["I2"] = '=IF(D2,"held"&" it","no")'
log["I3"] = "=1/0"
log["I4"] = "=rated+Limit"
log["A6"].comment = Comment("a remark without a value", "Bench")
log["A7"].font = Font(bold=True)
log["A7"] = "bold"
log["B7"].fill = PatternFill("solid", fgColor="DDEEFF")
words = DataValidation(type="list", formula1='"held,tripped"', allow_blank=True)
words.add("D2:D9")
log.add_data_validation(words)
log.conditional_formatting.add("B2:B4", FormulaRule(formula=["B2>15"], font=Font(bold=True)))
log.print_title_rows = "1:1"
log.auto_filter.ref = "A1:D4"
log.merge_cells("A9:C9")
chart = BarChart()
chart.add_data(Reference(log, min_col=2, min_row=1, max_row=4), titles_from_data=True)
log.add_chart(chart, "K2")
other = book.create_sheet("Other")
other["A1"] = "='Bench log'!G2*2"
other["A2"] = "=rated"
other.sheet_state = "veryHidden"
book.defined_names.append(DefinedName("rated", attr_text="'Bench log'!$B$2"))
book.defined_names.append(DefinedName("rated", attr_text="Other!$A$1", localSheetId=1))
book.defined_names.append(DefinedName("Limit", attr_text="0.5", hidden=True))
log.protection.sheet = True
book.save(FOLDER / "by-openpyxl.xlsx")
