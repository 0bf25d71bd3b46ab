# Points and tails of Student's t, chi-square and F.

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
