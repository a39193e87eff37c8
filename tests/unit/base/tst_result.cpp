// SPDX-License-Identifier: Apache-2.0
// A result is a value or an error, and asking for the wrong one ends the process.
#include <doctest/doctest.h>

#include <csignal>
#include <fcntl.h>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

#include "base/result.hpp"

using namespace snugwalk;

namespace {

Result<int> half(int n)
{
    if (n % 2 != 0)
        return Error{Errc::InvalidInput, "odd", std::to_string(n), "give an even number"};
    return n / 2;
}

Status quarter(int n)
{
    SNUG_TRY(half(n));
    SNUG_TRY(half(half(n).value()));
    return done();
}

// The signal that ended a child process which runs `act`, 0 when it ended by itself.
template <typename Act>
int signalOf(Act act)
{
    const pid_t child = fork();
    if (child == 0) {
        dup2(open("/dev/null", O_WRONLY), STDERR_FILENO); // the message is expected here
        signal(SIGABRT, SIG_DFL);                         // doctest has put its own handler there
        act();
        _exit(0);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status) ? WTERMSIG(status) : 0;
}

constexpr Errc allCodes[] = {Errc::Usage,       Errc::InvalidInput, Errc::OutOfRange,
                             Errc::Unsupported, Errc::NotFound,     Errc::Conflict,
                             Errc::Io,          Errc::Corrupt,      Errc::Network};

} // namespace

TEST_CASE("a result holds its value")
{
    const Result<int> result = half(8);
    REQUIRE(result.has_value());
    CHECK(static_cast<bool>(result));
    CHECK(result.value() == 4);
    CHECK(*result == 4);
}

TEST_CASE("a result holds its error with what, where and what to do")
{
    const Result<int> result = half(7);
    REQUIRE_FALSE(result.has_value());
    CHECK(result.error().code == Errc::InvalidInput);
    CHECK(result.error().what == "odd");
    CHECK(result.error().where == "7");
    CHECK(result.error().act == "give an even number");
}

TEST_CASE("the first error leaves the function")
{
    CHECK(quarter(8).has_value());
    CHECK(quarter(6).error().where == "3");
    CHECK(quarter(5).error().where == "5");
}

TEST_CASE("a value can be moved out")
{
    Result<std::string> result(std::string(100, 'x'));
    const std::string taken = std::move(result).value();
    CHECK(taken.size() == 100);
}

TEST_CASE("asking an error for its value aborts, in every build")
{
    CHECK(signalOf([] { static_cast<void>(half(7).value()); }) == SIGABRT);
    CHECK(signalOf([] { static_cast<void>(half(8).error()); }) == SIGABRT);
    CHECK(signalOf([] { static_cast<void>(half(8).value()); }) == 0);
}

TEST_CASE("exit codes are those of the command line's contract")
{
    CHECK(exitCode(Errc::Usage) == 2);
    CHECK(exitCode(Errc::InvalidInput) == 3);
    CHECK(exitCode(Errc::OutOfRange) == 3);
    CHECK(exitCode(Errc::Unsupported) == 3);
    CHECK(exitCode(Errc::NotFound) == 4);
    CHECK(exitCode(Errc::Io) == 5);
    CHECK(exitCode(Errc::Corrupt) == 5);
    CHECK(exitCode(Errc::Conflict) == 6);
    CHECK(exitCode(Errc::Network) == 7);
}

TEST_CASE("every code has a name of its own")
{
    std::set<std::string> names;
    for (const Errc code : allCodes)
        names.insert(codeName(code));
    CHECK(names.size() == std::size(allCodes));
    CHECK(names.count("bug") == 0);
    CHECK(names.count("out_of_range") == 1);
}
