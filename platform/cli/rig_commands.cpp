// SPDX-License-Identifier: Apache-2.0
// rig add, show, list, set; places is in rig_places_command.cpp.
#include <iostream>
#include <iterator>
#include <memory>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/rig_places.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"
#include "rig/names.hpp"
#include "rig/rig_value.hpp"
#include "rig/usual_fittings.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

Value withId(const Rig &rig)
{
    Value value = toValue(rig);
    value.member("id") = rig.id.text();
    return value;
}

// "measures.length" walks into the tree; numbers pick from lists that exist.
Value &memberAt(Value &root, const std::string &path)
{
    Value *at = &root;
    for (const std::string_view part : split(path, '.'))
        at = &at->member(part);
    return *at;
}

// What was typed: JSON for lists and objects, else text, so that units may stand in it.
Value typedValue(const std::string &path, const std::string &text)
{
    if (text.empty() || text == "none")
        return {};
    if (path == "fittings") {
        Value::List list;
        for (const std::string_view item : split(text, ','))
            list.emplace_back(trim(item));
        return list;
    }
    if (text.front() == '[' || text.front() == '{') {
        const Result<Value> json = parseJson(text);
        if (json)
            return *json;
    }
    if (const auto whole = parseInteger(text);
        whole && (path.ends_with("studs") || path.ends_with("load_index")))
        return *whole;
    return text;
}

Status applySettings(Value &rig, const std::vector<std::string> &settings)
{
    const Value known = toValue(Rig{});
    for (const std::string &setting : settings) {
        const auto equals = setting.find('=');
        const std::string path = setting.substr(0, equals);
        const std::string top = path.substr(0, path.find('.'));
        const bool isKnown = known.map().count(top) > 0 &&
                             (path == top || known[top].map().count(path.substr(top.size() + 1)) > 0);
        if (equals == std::string::npos || !isKnown)
            return Error{Errc::Usage, "not a setting: \"" + setting + "\"", "rig",
                         "write member=value, such as tires.placard=\"65 psi\"; `snugwalk rig show --json` "
                         "lists members"};
        memberAt(rig, path) = typedValue(path, setting.substr(equals + 1));
    }
    return done();
}

Result<Rig> checked(const Value &value)
{
    Result<Rig> rig = rigFromValue(value);
    if (!rig)
        return rig.error();
    const std::vector<Problem> problems = validate(*rig);
    if (problems.empty())
        return rig;
    Error error{Errc::InvalidInput, problems.front().what, problems.front().field, problems.front().act};
    if (problems.size() > 1)
        error.act += " (" + std::to_string(problems.size() - 1) + " more to correct after this)";
    return error;
}

Result<Value> readDescription(const std::string &file)
{
    if (file.empty())
        return Value(Value::Map{});
    std::string bytes;
    if (file == "-") {
        bytes.assign(std::istreambuf_iterator<char>(std::cin), {});
    } else {
        const Result<std::string> read = readFile(file, 1U << 20);
        if (!read)
            return read.error();
        bytes = *read;
    }
    Result<Value> value = parseJson(bytes);
    if (!value)
        return Error{value.error().code, value.error().what, file + ", " + value.error().where,
                     value.error().act};
    return value;
}

Result<Answer> save(Session &session, const Value &value, const Id &id)
{
    Result<Rig> rig = checked(value);
    if (!rig)
        return rig.error();
    rig->id = id;
    const auto book = session.book(true);
    const Result<Doer> doer = session.doer();
    if (!book || !doer)
        return book ? doer.error() : book.error();
    if (id.isNull() && findRig(**book, rig->name))
        return Error{Errc::Conflict, "there is a rig of this name", rig->name,
                     "give another name, or use `rig set`"};
    const Result<Id> saved = saveRig(**book, *rig, *doer);
    if (!saved)
        return saved.error();
    rig->id = *saved;
    return Answer{withId(*rig), rig->name + " " + saved->shortText() + " written\n"};
}

// Nobody said what is fitted: what such rigs usually have, so that no point stays unasked.
Status addUsualFittings(Value &value)
{
    const Result<Rig> rig = rigFromValue(value);
    if (!rig)
        return rig.error();
    const std::set<std::string> usual = usualFittings(rig->kind, rig->practice);
    value.member("fittings") = Value::List(usual.begin(), usual.end());
    return done();
}

Status addUsualHitch(Value &value)
{
    const Result<Rig> rig = rigFromValue(value);
    if (!rig)
        return rig.error();
    value.member("hitch") = std::string(slug(usualHitch(rig->kind)));
    return done();
}

Result<Answer> add(Session &session, const std::string &file, const std::vector<std::string> &settings)
{
    Result<Value> value = readDescription(file);
    if (!value)
        return value.error();
    SNUG_TRY(applySettings(*value, settings));
    const bool said = value->map().count("fittings") > 0;
    if (value->map().count("hitch") == 0)
        SNUG_TRY(addUsualHitch(*value));
    if (!said)
        SNUG_TRY(addUsualFittings(*value));
    Result<Answer> answer = save(session, *value, Id{});
    if (answer && !said)
        answer->text +=
            "fittings: the usual ones of its kind; see `snugwalk rig show`, change them with `snugwalk rig "
            "set fittings=…`\n";
    return answer;
}

Result<Answer> set(Session &session, const std::vector<std::string> &settings)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Value value = toValue(*rig);
    SNUG_TRY(applySettings(value, settings));
    return save(session, value, rig->id);
}

Result<Answer> show(Session &session)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    return Answer{withId(*rig), rigWords(*rig, session.units())};
}

Result<Answer> list(Session &session)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    const auto rigs = allRigs(**book);
    if (!rigs)
        return rigs.error();
    Value::List json;
    std::string text;
    for (const Rig &rig : *rigs) {
        json.push_back(withId(rig));
        text += rig.id.shortText() + "  " + rig.name + ", " +
                replaceAll(std::string(slug(rig.kind)), "_", " ") + "\n";
    }
    return Answer{Value::Map{{"rigs", json}}, rigs->empty() ? "no rig yet\n" : text};
}

} // namespace

void addRigCommands(CLI::App &app, Registry &registry)
{
    CLI::App *rig = app.add_subcommand("rig", "the rig: measures, ratings, fittings");
    rig->require_subcommand(1);
    auto file = std::make_shared<std::string>();
    auto settings = std::make_shared<std::vector<std::string>>();
    CLI::App *adding = rig->add_subcommand("add", "add a rig from a description, from settings, or both");
    adding->add_option("--from", *file,
                       "JSON file with the members that `rig show --json` prints; - for standard input");
    adding->add_option("settings", *settings, "member=value, units as you type them");
    registry.add(*adding,
                 "  snugwalk rig add --from rig.json\n"
                 "  snugwalk rig add name=Heron kind=travel_trailer measures.length=\"21 ft\" "
                 "measures.width=\"96 in\" \\\n"
                 "    measures.height=\"2.2 m\" measures.floor_height=\"22 in\" measures.axles='[\"11 ft\", "
                 "\"14 ft\"]' \\\n"
                 "    fittings=leaf_springs,electric_brakes,lp_gas",
                 [file, settings](Session &s) { return add(s, *file, *settings); });
    CLI::App *setting = rig->add_subcommand("set", "change members of a rig; none takes a value away");
    setting->add_option("settings", *settings, "member=value")->required();
    registry.add(*setting, "  snugwalk rig set tires.placard=\"65 psi\" wheels.torque=\"100 lb·ft\"",
                 [settings](Session &s) { return set(s, *settings); });
    registry.add(*rig->add_subcommand("show", "what is known of the rig"), "  snugwalk --rig Heron rig show",
                 [](Session &s) { return show(s); });
    registry.add(*rig->add_subcommand("list", "all rigs of the logbook"), "  snugwalk rig list --json",
                 [](Session &s) { return list(s); });
    addRigPlacesCommand(*rig, registry);
}

} // namespace snugwalk::cli
