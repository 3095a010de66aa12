# The report: chapters of the case.
