# The density of water by another equation than the one the program uses: G. S. Kell, Journal of Chemical and
# Engineering Data 20 (1975), for water free of air at 101 325 Pa; its constants are recalled.
kell <- function(t) {
  (999.83952 + 16.945176 * t - 7.9870401e-3 * t^2 - 46.170461e-6 * t^3 + 105.56302e-9 * t^4 - 280.54253e-12 * t^5) /
    (1 + 16.879850e-3 * t)
}
given("water-density-kell.csv", "fahrenheit")
f <- rows("water-density-kell.csv")$fahrenheit
check("water-density-kell.csv", "pounds_per_cubic_foot", kell((f - 32) / 1.8) * 0.3048^3 / 0.45359237, 5e-5, absolute = TRUE)
