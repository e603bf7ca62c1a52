cli-greeting = Pregunte en una línea, como "pavo de 7 kg, cena a las 8". Ctrl-D termina.
cli-stop = ALTO
cli-warn = CUIDADO
cli-info = Además
cli-assumed = Se supuso
cli-next = Puede decir
