# Drawings of the border: chart and sections.
drawing-heading = Caso { $case }, { $impression }
