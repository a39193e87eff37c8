# SPDX-License-Identifier: Apache-2.0
# Answers each line "NAME COUNT" on standard input with the seconds that one survreg fit of that data set
# takes, over COUNT fits; stays warm between lines.
suppressPackageStartupMessages(library(survival))

sets <- list(
    cracks = list(y = Surv(c(NA, cracks$days), c(cracks$days, NA), type = "interval2"),
                  w = c(cracks$fail, 167 - sum(cracks$fail))),
    four_lives = list(y = Surv(c(12, 6, NA, 20), c(18, NA, 9, 26), type = "interval2"), w = rep(1, 4)))

input <- file("stdin", open = "r")
while (length(line <- readLines(input, n = 1)) > 0) {
    asked <- strsplit(line, " ")[[1]]
    set <- sets[[asked[1]]]
    count <- as.integer(asked[2])
    began <- proc.time()[["elapsed"]]
    for (i in seq_len(count)) survreg(set$y ~ 1, weights = set$w, dist = "weibull")
    cat(format((proc.time()[["elapsed"]] - began) / count, digits = 8), "\n")
    flush(stdout())
}
