# checks
