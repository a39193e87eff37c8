# SPDX-License-Identifier: Apache-2.0
# Data sets of R's survival package as CSV, and what its survreg makes of each: Rscript survival.R FOLDER
suppressPackageStartupMessages(library(survival))

folder <- commandArgs(trailingOnly = TRUE)[1]
digits <- function(x) format(x, digits = 17, trim = TRUE)

# lower, upper in R's form (interval2: NA left or right), plain data frame of covariates
say <- function(name, lower, upper, weight, covariates = data.frame(row.names = seq_along(lower))) {
    table <- cbind(lower = ifelse(is.na(lower), 0, lower), upper = ifelse(is.na(upper), Inf, upper),
                   weight = weight, covariates)
    write.csv(table, file.path(folder, paste0(name, ".csv")), row.names = FALSE, quote = FALSE)
    response <- Surv(lower, upper, type = "interval2")
    formula <- if (ncol(covariates)) reformulate(names(covariates), "response") else response ~ 1
    fit <- survreg(formula, data = covariates, weights = weight, dist = "weibull",
                   control = survreg.control(rel.tolerance = 1e-14, maxiter = 200))
    errors <- sqrt(diag(vcov(fit)))
    cat(name, "scale", digits(exp(coef(fit)[1])), "\n")
    cat(name, "shape", digits(1 / fit$scale), "\n")
    cat(name, "log_likelihood", digits(fit$loglik[2]), "\n")
    cat(name, "log_scale_error", digits(errors[1]), "\n")
    cat(name, "log_shape_error", digits(errors[length(errors)]), "\n")
    for (i in seq_along(covariates)) {
        cat(name, paste0("covariate:", names(covariates)[i]), digits(coef(fit)[i + 1]), "\n")
        cat(name, paste0("error:", names(covariates)[i]), digits(errors[i + 1]), "\n")
    }
}

# time and whether it failed then, else still passing
exact <- function(time, failed) ifelse(failed, time, NA)

# each wheel looked at once: cracked by then, or sound then
seen <- with(turbine, rbind(data.frame(lower = hours, upper = NA, n = inspected - failed),
                            data.frame(lower = NA, upper = hours, n = failed)))
seen <- seen[seen$n > 0, ]
say("turbine", seen$lower, seen$upper, seen$n)

# cracks between looks; the rest sound at the last one
looks <- c(0, cracks$days)
n <- nrow(cracks)
say("cracks", c(ifelse(looks[1:n] == 0, NA, looks[1:n]), looks[n + 1]), c(cracks$days, NA),
    c(cracks$fail, 167 - sum(cracks$fail)))

# the same cracks by another law, which fits a little less well
other <- survreg(Surv(c(ifelse(looks[1:n] == 0, NA, looks[1:n]), looks[n + 1]), c(cracks$days, NA), type = "interval2") ~ 1,
                 weights = c(cracks$fail, 167 - sum(cracks$fail)), dist = "lognormal")
cat("cracks lognormal:intercept", digits(coef(other)[1]), "\n")
cat("cracks lognormal:sigma", digits(other$scale), "\n")
cat("cracks lognormal:log_likelihood", digits(other$loglik[2]), "\n")

say("genfan", genfan$hours, exact(genfan$hours, genfan$status == 1), rep(1, nrow(genfan)))
say("lung", lung$time, exact(lung$time, lung$status == 2), rep(1, nrow(lung)))
known <- lung[!is.na(lung$ph.ecog), ]
say("lung_covariates", known$time, exact(known$time, known$status == 2), rep(1, nrow(known)),
    known[, c("age", "sex", "ph.ecog")])
say("imotor", imotor$time, exact(imotor$time, imotor$status == 1), rep(1, nrow(imotor)),
    imotor[, "temp", drop = FALSE])
say("capacitor", capacitor$time, exact(capacitor$time, capacitor$status == 1), rep(1, nrow(capacitor)),
    capacitor[, c("temperature", "voltage")])
say("ovarian", ovarian$futime, exact(ovarian$futime, ovarian$fustat == 1), rep(1, nrow(ovarian)),
    ovarian[, c("age", "rx")])
say("veteran", veteran$time, exact(veteran$time, veteran$status == 1), rep(1, nrow(veteran)),
    veteran[, c("karno", "age", "diagtime")])
# the same lives seen only every 60 days: real times made interval-censored, none of length 0
before <- 60 * floor((veteran$time - 1) / 60)
say("veteran_looks", ifelse(before == 0 & veteran$status == 1, NA, ifelse(veteran$status == 1, before, veteran$time)),
    exact(before + 60, veteran$status == 1), rep(1, nrow(veteran)), veteran[, c("karno", "age")])
