// SPDX-License-Identifier: Apache-2.0
// Commands and their options, under CLI11's names: the library itself is compiled in two files only.
#pragma once

#include <deque>
#include <functional>
#include <initializer_list>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace CLI {
class App;
class Option;
} // namespace CLI

// CLI11 is all templates and inline code: included everywhere, each command would compile its parser again,
// ten seconds a file. So this namespace stands in front of the library's and forwards to it.
namespace snugwalk::cli::CLI {

enum class Letters { AsTyped, AnyCase };
inline constexpr Letters ignore_case = Letters::AnyCase;

/// One of these words.
struct IsMember {
    IsMember(std::initializer_list<const char *> list, Letters how = Letters::AsTyped)
        : words(list.begin(), list.end()), letters(how)
    {}
    explicit IsMember(std::vector<std::string> list) : words(std::move(list)) {}
    std::vector<std::string> words;
    Letters letters = Letters::AsTyped;
};

/// A number from `low` to `high`, both taken.
template <typename Number>
struct Range {
    Range(Number from, Number to) : low(from), high(to) {}
    Number low;
    Number high;
};

enum class Sign { Positive, NotNegative };
inline constexpr Sign PositiveNumber = Sign::Positive;
inline constexpr Sign NonNegativeNumber = Sign::NotNegative;

class Option {
public:
    explicit Option(::CLI::Option &option) : m_option(option) {}
    Option *required();
    /// What is typed for it, word by word.
    Option *check(const IsMember &words);
    Option *check(Sign sign);
    template <typename Number>
    Option *check(const Range<Number> &range);
    /// Whether more than one value may follow one mention of it.
    Option *allow_extra_args(bool allowed);

private:
    ::CLI::Option &m_option;
};

/// A command, or the whole line. What it hands out lives as long as it does.
class App {
public:
    explicit App(::CLI::App &app) : m_app(app) {}
    App *add_subcommand(const std::string &name, const std::string &about);
    /// `Kind` is one of those listed at the end of app.cpp.
    template <typename Kind>
    Option *add_option(const std::string &name, Kind &into, const std::string &about);
    Option *add_flag(const std::string &name, bool &into, const std::string &about);
    void require_subcommand(int count);
    void require_subcommand(int least, int most);
    void footer(const std::string &text);
    /// Called once the line is read, if it names this command and none below it.
    void callback(std::function<void()> act);

private:
    Option *keep(::CLI::Option *option);

    ::CLI::App &m_app;
    std::deque<App> m_commands; ///< a deque, for what is in it never moves
    std::deque<Option> m_options;
};

} // namespace snugwalk::cli::CLI
