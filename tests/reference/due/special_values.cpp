// SPDX-License-Identifier: Apache-2.0
// Prints special functions and first passages over a range of arguments, for special_functions.py to compare.
#include <cstdio>
#include <initializer_list>

#include "due/first_passage.hpp"
#include "due/special_functions.hpp"
#include "due/trend/condition.hpp"

namespace {

using namespace snugwalk;

void say(const char *name, std::initializer_list<double> arguments, double value)
{
    std::printf("%s", name);
    for (const double argument : arguments)
        std::printf(" %.17g", argument);
    std::printf(" %.17g\n", value);
}

} // namespace

int main()
{
    for (const double a : {0.1, 0.5, 1.0, 2.5, 9.0, 40.0, 300.0}) {
        for (const double share : {0.01, 0.3, 0.9, 1.0, 1.1, 2.0, 5.0})
            say("gammaincc", {a, a * share}, gammaUpper(a, a * share));
        for (const double b : {0.5, 1.0, 7.0, 60.0}) {
            for (const double x : {0.001, 0.2, 0.5, 0.83, 0.999})
                say("betainc", {a, b, x}, betaRegularized(a, b, x));
        }
    }
    for (const double x : {0.0, 0.3, 1.0, 1.9, 2.0, 2.1, 3.0, 5.0, 9.0, 26.0, 30.0, 1e3, 1e8})
        say("erfcx", {x}, erfcScaled(x));
    for (const double p : {1e-6, 0.01, 0.1, 0.3, 0.5, 0.9, 0.99, 0.999999}) {
        say("ndtri", {p}, normalQuantile(p));
        for (const double freedom : {1.0, 2.0, 3.0, 7.5, 30.0, 1000.0})
            say("stdtrit", {freedom, p}, studentQuantile(p, freedom));
    }
    for (const double drift : {0.02, 0.25, 3.0}) {
        for (const double spread : {0.05, 0.35, 2.0}) {
            for (const double share : {0.3, 0.8, 1.0, 1.3, 3.0}) {
                const double time = 3.0 / drift * share;
                say("first_passage", {drift, spread, 3.0, time},
                    chanceWithin(LumpyRate{drift, spread * spread}, 3.0, time));
            }
        }
    }
    for (const double time : {1.0, 6.0, 12.0, 18.0, 40.0})
        say("gamma_wear", {0.5, 2.0, 3.0, time}, chanceWithin(GammaWear{0.5, 2.0}, 3.0, time));
    return 0;
}
