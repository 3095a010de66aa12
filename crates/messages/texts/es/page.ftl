# The report: its frame, verdict and what was not judged.
