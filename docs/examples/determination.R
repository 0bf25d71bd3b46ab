# Redoes one determination from an export of Porebench, with nothing but R.
#
#     Rscript determination.R FOLDER DETERMINATION_ID
#
# FOLDER is what "porebench export --book lab.porebench FOLDER" wrote. Prints a line for each trial that counts and one for each
# result, name and value with a tab between. The arithmetic is that of "porebench factor --trials": readings as typed; what the
# calibration of a meter corrects is not in it.

# Litres in a unit, exact by definition of foot, inch, yard and US gallon.
litres <- c(m3 = 1000, L = 1, mL = 0.001, ft3 = 28.316846592, yd3 = 764.554857984, in3 = 0.016387064, gal = 3.785411784)

rows <- function(folder, name) {
  read.csv(file.path(folder, name), colClasses = "character", check.names = FALSE, na.strings = character(0),
           fileEncoding = "UTF-8", encoding = "UTF-8")
}

# kg/m3, by Tanaka et al., Metrologia 38 (2001), equation 1.
water_density <- function(t) {
  999.974950 * (1 - (t - 3.983035)^2 * (t + 301.797) / (522528.9 * (t + 69.34881)))
}

# G of each trial in % air, NA where a reading is missing.
trial_factors <- function(trials) {
  number <- function(column) as.numeric(ifelse(trials[[column]] == "", NA, trials[[column]]))
  withdrawn <- number("withdrawn")
  unit <- trials$withdrawn_unit
  bowl <- number("bowl_volume") * litres[trials$bowl_volume_unit]
  taken <- ifelse(unit == "g", withdrawn / water_density(number("water_temp_c")), withdrawn / 1000)
  percent <- ifelse(unit == "pct", withdrawn, 100 * taken / bowl)
  ifelse(trials$meter_type == "A", number("h1_pct") - number("h2_pct"), number("gauge_pct") - percent)
}

# To 0.1 % air; a 5 goes to the even digit, or away from zero, as the profiles that come with Porebench say. Nine decimals first: a
# mean of 0.35 that is 0.35000000000000003 in the computer is a tie all the same.
rounded <- function(mean, profile) {
  tenths <- round(mean * 10, 9)
  below <- floor(tenths)
  rest <- tenths - below
  if (abs(rest - 0.5) > 1e-9) return(floor(tenths + 0.5) / 10)
  away <- profile %in% c("en-12350-7", "jis-a1128")
  if (away) return(sign(tenths) * ceiling(abs(tenths)) / 10)
  (if (below %% 2 == 0) below else below + 1) / 10
}

arguments <- commandArgs(trailingOnly = TRUE)
if (length(arguments) != 2) stop("usage: Rscript determination.R FOLDER DETERMINATION_ID")
sheet <- rows(arguments[1], "trial-sheet.csv")
trials <- sheet[sheet$determination_id == arguments[2], ]
if (nrow(trials) == 0) stop("no trial of ", arguments[2])
factors <- trial_factors(trials)
counts <- !is.na(factors) & trials$leak == "no" & trials$struck_because == ""
if (!any(counts)) stop("no trial of ", arguments[2], " counts")
mixes <- rows(arguments[1], "mix-design.csv")
profile <- mixes$profile_id[match(trials$mix_id[1], mixes$mix_id)]
g <- factors[counts]
say <- function(name, value) cat(name, "\t", format(value, digits = 15), "\n", sep = "")
for (i in which(counts)) say(trials$trial_id[i], factors[i])
say("accepted", length(g))
say("meanPercent", mean(g))
say("standardDeviationPercent", sd(g))
say("standardErrorPercent", sd(g) / sqrt(length(g)))
say("reportedPercent", rounded(mean(g), profile))
