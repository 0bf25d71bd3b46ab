# Points and tails of Student's t, chi-square, F and the studentised range, and the critical values made of them.

given("t-points.csv", "upperTail", "degreesOfFreedom")
t <- rows("t-points.csv")
check("t-points.csv", "point", qt(t$upperTail, t$degreesOfFreedom, lower.tail = FALSE), 1e-10)

given("chi-square-points.csv", "df", "probability")
x2 <- rows("chi-square-points.csv")
check("chi-square-points.csv", "quantile", qchisq(x2$probability, x2$df), 1e-9)
check("chi-square-points.csv", "upper", pchisq(x2$quantile, x2$df, lower.tail = FALSE), 1e-9)

given("f-chi-square-points.csv", "distribution", "numerator", "denominator", "upperTail")
points <- rows("f-chi-square-points.csv")
is_f <- points$distribution == "f"
if (!all(is_f | points$distribution == "chi-square")) stop("f-chi-square-points.csv: another distribution")
check("f-chi-square-points.csv", "point", qf(points$upperTail, points$numerator, points$denominator, lower.tail = FALSE)[is_f],
      1e-9, is_f)
check("f-chi-square-points.csv", "point", qchisq(points$upperTail, points$numerator, lower.tail = FALSE)[!is_f], 1e-9, !is_f)

# Far out, near the middle and near 1. R's qf() and qt() lose digits there (and qf() takes chi-square for F from 400 000
# degrees of freedom on); its qbeta() does not, and gives both: x / (1 - x) of whichever of x and 1 - x is the smaller.
ratio_of_beta <- function(lower, upper) ifelse(lower < 0.5, lower / (1 - lower), (1 - upper) / upper)
f_point <- function(p, a, b) ratio_of_beta(qbeta(p, a / 2, b / 2, lower.tail = FALSE), qbeta(p, b / 2, a / 2)) * b / a
t_point <- function(p, df) {
  middle <- sqrt(df * ratio_of_beta(qbeta(2 * abs(0.5 - p), 1 / 2, df / 2), qbeta(2 * abs(0.5 - p), df / 2, 1 / 2, lower.tail = FALSE)))
  far <- sqrt(df / ratio_of_beta(qbeta(2 * pmin(p, 1 - p), df / 2, 1 / 2), qbeta(2 * pmin(p, 1 - p), 1 / 2, df / 2, lower.tail = FALSE)))
  ifelse(p > 0.5, -1, 1) * ifelse(abs(0.5 - p) < 0.2, middle, far)
}
far_point <- function(distribution, p, a, b) {
  switch(distribution, normal = -qnorm(p), t = t_point(p, a), f = f_point(p, a, b),
         `chi-square` = if (p > 0.5) qchisq(1 - p, a) else qchisq(p, a, lower.tail = FALSE))
}
given("extreme-points.csv", "distribution", "numerator", "denominator", "upperTail")
far <- rows("extreme-points.csv")
check("extreme-points.csv", "point", mapply(far_point, far$distribution, far$upperTail, far$numerator, far$denominator), 1e-9)

given("variance-ratio-tails.csv", "df1", "df2", "ratio")
v <- rows("variance-ratio-tails.csv")
check("variance-ratio-tails.csv", "upper", pf(v$ratio, v$df1, v$df2, lower.tail = FALSE), 1e-9)

# The studentised range: by R's qtukey, and once more by the definition, without it: a range of normal values over
# a standard deviation s of its own, which is the root of a chi-square / df.
studentised_below <- function(q, n, df) {
  integrate(function(s) sapply(s, function(one) range_below(q * one, n)) * 2 * df * s * dchisq(df * s^2, df),
            sqrt(qchisq(1e-13, df) / df), sqrt(qchisq(1e-13, df, lower.tail = FALSE) / df), rel.tol = 1e-9)$value
}
given("studentised-range.csv", "n", "df", "probability")
q <- rows("studentised-range.csv")
check("studentised-range.csv", "factor", mapply(qtukey, q$probability, q$n, q$df), 1e-6)
compare("studentised-range.csv, the probability by integration",
        q$probability, mapply(studentised_below, q$factor, q$n, q$df), 1e-6)
not_checked("studentised-range.csv", "printed", "recalled from H. L. Harter's table")

# The same, sharper, over the whole range that is promised.
sharp_range_below <- function(w, n) {
  n * integrate(function(x) dnorm(x) * (pnorm(x + w) - pnorm(x))^(n - 1), -9, 9, rel.tol = 1e-11, subdivisions = 500)$value
}
sharp_below <- function(q, n, df) {
  integrate(function(s) sapply(s, function(one) sharp_range_below(q * one, n)) * 2 * df * s * dchisq(df * s^2, df),
            sqrt(qchisq(1e-16, df) / df), sqrt(qchisq(1e-14, df, lower.tail = FALSE) / df), rel.tol = 1e-11,
            subdivisions = 2000)$value
}
given("studentised-range-points.csv", "n", "df", "probability")
sharp <- rows("studentised-range-points.csv")
check("studentised-range-points.csv", "factor", mapply(function(probability, n, df, factor) {
  rise <- 1e-4 * factor
  below <- sharp_below(factor, n, df)
  factor - (below - probability) * rise / (sharp_below(factor + rise, n, df) - below)
}, sharp$probability, sharp$n, sharp$df, sharp$factor), 5e-10)

given("critical-range-factors.csv", "n")
f <- rows("critical-range-factors.csv")
check("critical-range-factors.csv", "factor",
      sapply(f$n, function(n) uniroot(function(w) range_below(w, n) - 0.95, c(1, 10), tol = 1e-12)$root), 1e-9)

# --- Critical values --------------------------------------------------------------------------------------------------
given("grubbs-critical.csv", "n")
g <- rows("grubbs-critical.csv")
for (a in names(g)[-1]) {
  t <- qt(as.numeric(a) / g$n, g$n - 2, lower.tail = FALSE)
  check("grubbs-critical.csv", a, (g$n - 1) / sqrt(g$n) * sqrt(t^2 / (g$n - 2 + t^2)), 1e-9)
}

given("cochran-critical.csv", "p", "n")
largest <- rows("cochran-critical.csv")
for (a in c(0.05, 0.01)) {
  ratio <- qf(1 - a / largest$p, largest$n - 1, (largest$p - 1) * (largest$n - 1))
  check("cochran-critical.csv", sprintf("C%02.0f", 100 * a), 1 / (1 + (largest$p - 1) / ratio), 5.1e-7, absolute = TRUE)
}

given("mandel-critical.csv", "p")
m <- rows("mandel-critical.csv")
for (column in names(m)[-1]) {
  a <- as.numeric(sub(".*?(0\\..*)$", "\\1", column))
  if (startsWith(column, "h")) {
    t <- qt(1 - a / 2, m$p - 2)
    computed <- (m$p - 1) * t / sqrt(m$p * (t^2 + m$p - 2))
  } else {
    n <- as.numeric(sub("k_n(.).*", "\\1", column))
    computed <- sqrt(m$p / (1 + (m$p - 1) / qf(1 - a, n - 1, (m$p - 1) * (n - 1))))
  }
  check("mandel-critical.csv", column, computed, 5.1e-7, absolute = TRUE)
}

# The factor of a two-sided tolerance interval, integrated over the standard deviation instead of the mean.
given("tolerance-factors.csv", "count", "content", "confidence")
tolerance <- rows("tolerance-factors.csv")
farthest <- function(half, content) { # how far the mean may be off while mean +- half still holds the content
  if (2 * pnorm(half) - 1 <= content) return(0)
  uniroot(function(off) pnorm(off + half) - pnorm(off - half) - content, c(0, half + 10), tol = 1e-14)$root
}
factor_of <- function(count, content, confidence) {
  reached <- function(k) {
    least <- qnorm((1 + content) / 2) / k
    held <- function(s) sapply(s, function(s) {
      (2 * pnorm(sqrt(count) * farthest(k * s, content)) - 1) * dchisq((count - 1) * s^2, count - 1) * 2 * (count - 1) * s
    })
    integrate(held, least, max(least + 1, sqrt(qchisq(1e-14, count - 1, lower.tail = FALSE) / (count - 1))), rel.tol = 1e-11,
              subdivisions = 2000)$value
  }
  uniroot(function(k) reached(k) - confidence, c(0.5, 60), tol = 1e-10)$root
}
check("tolerance-factors.csv", "factor", mapply(factor_of, tolerance$count, tolerance$content, tolerance$confidence), 1e-6)
