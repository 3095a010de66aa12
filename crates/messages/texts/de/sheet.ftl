# sheet
