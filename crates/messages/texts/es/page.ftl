# page
