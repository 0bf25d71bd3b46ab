# Variances of many sets, each drawn towards what they have in common, with limma.

suppressMessages(library(limma))
given("shrunk-variances.csv", "set", "variances", "degrees")
sets <- rows("shrunk-variances.csv")
found <- Map(function(variances, degrees) squeezeVar(numbers(variances), numbers(degrees)), sets$variances, sets$degrees)
check("shrunk-variances.csv", "priorVariance", sapply(found, function(set) set$var.prior), 1e-9)
check("shrunk-variances.csv", "priorDegrees", sapply(found, function(set) set$df.prior), 1e-9)
check_cells("shrunk-variances.csv", "shrunk", unname(lapply(found, function(set) set$var.post)), 1e-9)
