cli-greeting = Ask a line, such as "16 lb bird, dinner at 6". Ctrl-D ends.
cli-stop = STOP
cli-warn = CAUTION
cli-info = Also note
cli-assumed = Assumed
cli-next = You could say
