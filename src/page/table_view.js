"use strict";

// A table of an answer. One with many columns puts the name and its weight on a line of their own, and the rest small below,
// so that it fits a narrow screen. The roles are written out, for such a layout would take them from the elements.

const widestPlainTable = 4;

function cellView(tag, role, at, align) {
  const kinds = [align, at === 0 ? "name" : at === 1 ? "weight" : "rest"];
  return make(tag, { role, class: kinds.join(" ") });
}

function tableRow(piece, row, { head, total }) {
  const cells = row.map((_, at) => cellView(head ? "th" : "td", head ? "columnheader" : "cell", at, piece.columns[at] || "left"));
  if (head) cells.forEach((cell) => cell.setAttribute("scope", "col"));
  return { cells, node: make("tr", { role: "row", class: total ? "total" : null }, ...cells) };
}

// Rules are empty rows; the row after one is set off from those before.
function tableRows(piece) {
  const rows = [];
  piece.rows.forEach((row, at) => {
    if (row.length) rows.push({ at, ...tableRow(piece, row, { head: at === 0, total: at > 0 && !piece.rows[at - 1].length }) });
  });
  return rows;
}

function tableView(piece) {
  const rows = tableRows(piece);
  const wide = piece.columns.length > widestPlainTable;
  const table = make("table", { role: "table", class: wide ? `stacked rest-${piece.columns.length - 2}` : "plain" },
    make("thead", { role: "rowgroup" }, ...rows.filter((row) => row.at === 0).map((row) => row.node)),
    make("tbody", { role: "rowgroup" }, ...rows.filter((row) => row.at > 0).map((row) => row.node)));
  return {
    node: make("div", { class: "table" }, table),
    tell: (next) => rows.forEach(({ at, cells }) => cells.forEach((cell, column) => setText(cell, next.rows[at][column]))),
  };
}

// A told table with its first column and those of the others that are named, for a narrow screen.
function withColumns(table, names) {
  const columns = [0, ...names.map((name) => table.rows[0].indexOf(name)).filter((at) => at > 0)];
  const pick = (cells) => columns.map((at) => cells[at]);
  return { ...table, columns: pick(table.columns), rows: table.rows.map((row) => (row.length ? pick(row) : row)) };
}
