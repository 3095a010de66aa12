# The report: chapters of one impression.
