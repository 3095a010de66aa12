# The impression in 3D on the page.
