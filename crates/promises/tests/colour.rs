//! Show-through by colour, asked of many mouths.

promises::ask!(Many, colour:
    bare_tray_is_found_by_its_colour_and_none_is_invented,
    bare_tray_is_found_by_its_colour_beside_a_stated_thickness_too,
);
