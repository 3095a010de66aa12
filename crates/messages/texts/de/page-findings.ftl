# The report: findings, notes and views.
