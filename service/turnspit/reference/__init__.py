"""Published tables as data files, each row with its source, and the one loader that reads them."""

from turnspit.reference.tables import STANDINGS, BadTable, Row, Table, names, parse, table

__all__ = ["STANDINGS", "BadTable", "Row", "Table", "names", "parse", "table"]
