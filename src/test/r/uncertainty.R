# Uncertainty: the formulas of the GUM, and distributions of JCGM 101:2008 by quadrature instead of draws.

given("welch-satterthwaite.csv", "uncertainties", "degreesOfFreedom")
sums <- rows("welch-satterthwaite.csv")
u <- lapply(sums$uncertainties, numbers)
nu <- lapply(sums$degreesOfFreedom, numbers)
check("welch-satterthwaite.csv", "combined", sapply(u, function(u) sqrt(sum(u^2))), 1e-10)
check("welch-satterthwaite.csv", "effective", mapply(function(u, nu) sum(u^2)^2 / sum(u^4 / nu), u, nu), 1e-10)

# l = ls + d - ls (da theta + alpha dtheta)
given("uncertainty-end-gauge.csv", "input", "value", "uncertainty", "degreesOfFreedom")
e <- rows("uncertainty-end-gauge.csv")
value <- setNames(e$value, e$input)
u <- setNames(e$uncertainty, e$input)
ls <- value[["standard"]]
slope <- c(standard = 1 - value[["expansion-difference"]] * value[["temperature"]]
             - value[["expansion"]] * value[["temperature-difference"]],
           difference = 1, expansion = -ls * value[["temperature-difference"]],
           temperature = -ls * value[["expansion-difference"]], `expansion-difference` = -ls * value[["temperature"]],
           `temperature-difference` = -ls * value[["expansion"]])
contribution <- abs(slope[e$input]) * u[e$input]
combined <- sqrt(sum(contribution^2))
effective <- combined^4 / sum(contribution^4 / e$degreesOfFreedom)
check("uncertainty-end-gauge.csv", "contribution", contribution, 1e-9)
check("uncertainty-end-gauge.csv", "combined", combined, 1e-9, 1)
check("uncertainty-end-gauge.csv", "effective", effective, 1e-9, 1)
check("uncertainty-end-gauge.csv", "expanded99", qt(0.995, floor(effective)) * combined, 1e-9, 1)
check("uncertainty-end-gauge.csv", "secondOrder", sqrt(combined^2
        + (ls * u[["expansion-difference"]] * u[["temperature"]])^2
        + (ls * u[["expansion"]] * u[["temperature-difference"]])^2), 1e-9, 1)

# --- Sums: half the shortest 95 % interval ------------------------------------------------------------------------------
given("monte-carlo-sums.csv", "shapes", "uncertainties")
s <- rows("monte-carlo-sums.csv")
u <- lapply(s$uncertainties, numbers)
check("monte-carlo-sums.csv", "standardDeviation", sapply(u, function(u) sqrt(sum(u^2))), 1e-12)
# The probability that a sum of rectangular quantities with these half-widths lies below x: sum over the corners of
# the box of sign * (x - corner)^n / n! / the box's volume.
boxes_below <- function(x, a) {
  corners <- as.matrix(expand.grid(rep(list(c(-1, 1)), length(a))))
  place <- x - corners %*% a
  sum(apply(corners, 1, prod) * (-1)^length(a) * pmax(place, 0)^length(a)) / factorial(length(a)) / prod(2 * a)
}
check("monte-carlo-sums.csv", "half", mapply(function(shapes, u) {
  if (all(strsplit(shapes, ";")[[1]] == "normal")) return(qnorm(0.975) * sqrt(sum(u^2)))
  if (!all(strsplit(shapes, ";")[[1]] == "rectangular")) stop("monte-carlo-sums.csv: another shape")
  uniroot(function(x) boxes_below(x, u * sqrt(3)) - 0.975, c(0, sum(u) * sqrt(3)), tol = 1e-12)$root
}, s$shapes, u), 1e-10)

# --- Comparison loss: y = x1^2 + x2^2, x2 about 0: u^2 times a noncentral chi-square of 2 degrees of freedom -------------
given("monte-carlo-comparison-loss.csv", "x1", "uncertainty")
l <- rows("monte-carlo-comparison-loss.csv")
check("monte-carlo-comparison-loss.csv", "mean", l$x1^2 + 2 * l$uncertainty^2, 1e-12)
check("monte-carlo-comparison-loss.csv", "standardDeviation",
      sqrt(4 * l$x1^2 * l$uncertainty^2 + 4 * l$uncertainty^4), 1e-12)
check("monte-carlo-comparison-loss.csv", "firstOrder", 2 * l$x1 * l$uncertainty, 1e-12)
shortest <- mapply(function(x1, u) {
  point <- function(p) if (p <= 0) 0 else qchisq(p, 2, (x1 / u)^2)
  start <- optimize(function(p) point(p + 0.95) - point(p), c(0, 0.05 - 1e-9), tol = 1e-10)$minimum
  if (point(0.95) <= point(start + 0.95) - point(start)) start <- 0
  u^2 * c(point(start), point(start + 0.95))
}, l$x1, l$uncertainty)
# Near the shortest interval its length hardly changes with its place: the ends are less sure than the length.
check("monte-carlo-comparison-loss.csv", "shortestLow", shortest[1, ], 1e-8, absolute = TRUE)
check("monte-carlo-comparison-loss.csv", "shortestHigh", shortest[2, ], 1e-8, absolute = TRUE)

# --- Mass: y = (m + d)(1 + (a - 1.2)(1/w - 1/r)) - 100 000 mg -----------------------------------------------------------
# Given a, w and r, y is normal; over their box it is averaged at the points of Gauss and Legendre.
parts <- list(a = legendre(16, 1.1, 1.3), w = legendre(16, 7000, 9000), r = legendre(16, 7950, 8050))
box <- do.call(expand.grid, lapply(parts, function(part) part$at))
weight <- apply(do.call(expand.grid, lapply(parts, function(part) part$weight / sum(part$weight))), 1, prod)
scale <- 1 + (box$a - 1.2) * (1 / box$w - 1 / box$r)
centre <- (100000 + 1.234) * scale - 100000
deviation <- sqrt(0.05^2 + 0.02^2) * scale
average <- sum(weight * centre)
below <- function(y) sum(weight * pnorm(y, centre, deviation))
check("monte-carlo-mass.csv", "mean", average, 1e-8)
check("monte-carlo-mass.csv", "standardDeviation", sqrt(sum(weight * (deviation^2 + (centre - average)^2))), 1e-8)
check("monte-carlo-mass.csv", "low", uniroot(function(y) below(y) - 0.025, c(1, 1.2), tol = 1e-12)$root, 1e-8)
check("monte-carlo-mass.csv", "high", uniroot(function(y) below(y) - 0.975, c(1.3, 1.5), tol = 1e-12)$root, 1e-8)
not_checked("monte-carlo-mass.csv", c("printedMean", "printedDeviation", "printedLow", "printedHigh"),
            "recalled from JCGM 101:2008, 9.3")
