# Drawings of the border: chart and sections.
drawing-heading = Case { $case }, { $impression }
