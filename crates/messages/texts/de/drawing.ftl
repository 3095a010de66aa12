# Drawings of the border: chart and sections.
drawing-heading = Fall { $case }, { $impression }
