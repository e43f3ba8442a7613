import type { ReadyAxis, ReadyChart, ReadySeries } from "../pane/sheets/ready-sheet";
import { addressOf } from "./blocks";
import { writeCells } from "./write-sheet";

/** Draws a ready sheet's chart as one of Excel's own, with the cells it reads, without waiting. */
export const drawChart = (sheet: Excel.Worksheet, { title, x, y, series, at, cells }: ReadyChart): void => {
  writeCells(sheet, cells);
  const [first, ...others] = series;
  if (!first) return;
  // From one column Excel makes one series, whatever stands in it; its x values are told below.
  const chart = sheet.charts.add(
    Excel.ChartType.xyscatterLinesNoMarkers,
    sheet.getRange(addressOf(first.y)),
    Excel.ChartSeriesBy.columns,
  );
  chart.title.text = title;
  chart.legend.position = Excel.ChartLegendPosition.bottom;
  const corner = (row: number, column: number) => addressOf({ row, column, rows: 1, columns: 1 });
  chart.setPosition(corner(at.row, at.column), corner(at.row + at.rows - 1, at.column + at.columns - 1));
  drawSeries(sheet, chart.series.getItemAt(0), first);
  for (const one of others) drawSeries(sheet, chart.series.add(one.name), one);
  // In a scatter chart both are axes of values; Excel calls the one along the foot that of categories.
  scale(chart.axes.categoryAxis, x);
  scale(chart.axes.valueAxis, y);
};

const drawSeries = (
  sheet: Excel.Worksheet,
  drawn: Excel.ChartSeries,
  { name, x, y, drawn: as, color }: ReadySeries,
) => {
  drawn.name = name;
  drawn.setXAxisValues(sheet.getRange(addressOf(x)));
  drawn.setValues(sheet.getRange(addressOf(y)));
  if (as === "points") {
    drawn.chartType = Excel.ChartType.xyscatter;
    drawn.markerStyle = Excel.ChartMarkerStyle.circle;
    drawn.markerSize = 7;
    drawn.markerBackgroundColor = `#${color}`;
    drawn.markerForegroundColor = `#${color}`;
  } else {
    drawn.format.line.color = `#${color}`;
    drawn.format.line.weight = 1.75;
  }
};

const scale = (axis: Excel.ChartAxis, { title, scale, from, to }: ReadyAxis): void => {
  axis.title.text = title;
  if (scale === "log") {
    axis.scaleType = Excel.ChartAxisScaleType.logarithmic;
    axis.logBase = 10;
  }
  if (from !== undefined) axis.minimum = from;
  if (to !== undefined) axis.maximum = to;
  axis.majorGridlines.visible = true;
};
