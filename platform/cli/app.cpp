// SPDX-License-Identifier: Apache-2.0
// Hands commands and options on to CLI11.
#include "cli/app.hpp"

#include <optional>

#include <CLI/CLI.hpp>

namespace snugwalk::cli::CLI {

Option *Option::required()
{
    m_option.required();
    return this;
}

Option *Option::check(const IsMember &words)
{
    if (words.letters == Letters::AnyCase)
        m_option.check(::CLI::IsMember(words.words, ::CLI::ignore_case));
    else
        m_option.check(::CLI::IsMember(words.words));
    return this;
}

Option *Option::check(Sign sign)
{
    if (sign == Sign::Positive)
        m_option.check(::CLI::PositiveNumber);
    else
        m_option.check(::CLI::NonNegativeNumber);
    return this;
}

template <typename Number>
Option *Option::check(const Range<Number> &range)
{
    m_option.check(::CLI::Range(range.low, range.high));
    return this;
}

Option *Option::allow_extra_args(bool allowed)
{
    m_option.allow_extra_args(allowed);
    return this;
}

App *App::add_subcommand(const std::string &name, const std::string &about)
{
    return &m_commands.emplace_back(*m_app.add_subcommand(name, about));
}

template <typename Kind>
Option *App::add_option(const std::string &name, Kind &into, const std::string &about)
{
    return keep(m_app.add_option(name, into, about));
}

Option *App::add_flag(const std::string &name, bool &into, const std::string &about)
{
    return keep(m_app.add_flag(name, into, about));
}

void App::require_subcommand(int count) { m_app.require_subcommand(count); }
void App::require_subcommand(int least, int most)
{
    m_app.require_subcommand(static_cast<std::size_t>(least), static_cast<std::size_t>(most));
}

void App::footer(const std::string &text) { m_app.footer(text); }

// CLI11 calls back a command with commands below it as well, after theirs.
void App::callback(std::function<void()> act)
{
    m_app.callback([&app = m_app, act = std::move(act)] {
        if (app.get_subcommands().empty())
            act();
    });
}

Option *App::keep(::CLI::Option *option) { return &m_options.emplace_back(*option); }

template Option *App::add_option(const std::string &, std::string &, const std::string &);
template Option *App::add_option(const std::string &, std::vector<std::string> &, const std::string &);
template Option *App::add_option(const std::string &, int &, const std::string &);
template Option *App::add_option(const std::string &, unsigned &, const std::string &);
template Option *App::add_option(const std::string &, std::size_t &, const std::string &);
template Option *App::add_option(const std::string &, double &, const std::string &);
template Option *App::add_option(const std::string &, std::optional<double> &, const std::string &);
template Option *Option::check(const Range<int> &);
template Option *Option::check(const Range<unsigned> &);
template Option *Option::check(const Range<std::size_t> &);
template Option *Option::check(const Range<double> &);

} // namespace snugwalk::cli::CLI
