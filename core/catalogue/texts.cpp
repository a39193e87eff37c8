// SPDX-License-Identifier: Apache-2.0
// Words by slug, from one language's file.
#include "catalogue/texts.hpp"

#include "base/text.hpp"
#include "catalogue/own.hpp"

namespace snugwalk {

namespace {

Error unreadable(const std::string &where)
{
    return {Errc::Corrupt, "the catalogue's texts cannot be read", where, "install the program again"};
}

// "moisture-map" of "moisture-map-again"; any other slug as it is.
std::string_view firstLook(std::string_view slug)
{
    constexpr std::string_view again = "-again";
    return slug.ends_with(again) ? slug.substr(0, slug.size() - again.size()) : slug;
}

} // namespace

Result<Texts> Texts::load(std::string_view words, const std::vector<std::string_view> &pointWords,
                          const std::vector<std::string_view> &benchWords)
{
    const Result<Value> root = parseJson(words);
    if (!root || !(*root)["phrases"].isMap())
        return unreadable(root ? "phrases" : root.error().where);
    Value::Map all = root->map();
    Value::Map points;
    for (std::string_view bytes : pointWords) {
        const Result<Value> zone = parseJson(bytes);
        if (!zone || !(*zone)["points"].isMap())
            return unreadable(zone ? "points" : zone.error().where);
        points.merge(Value::Map((*zone)["points"].map()));
    }
    all["points"] = std::move(points);
    for (std::string_view bytes : benchWords) {
        const Result<Value> subject = parseJson(bytes);
        const auto name = subject ? (*subject)["subject"].asString() : std::nullopt;
        if (!name)
            return unreadable(subject ? "subject" : subject.error().where);
        all["bench_subjects"].member(*name) = (*subject)["title"];
        for (const char *group : {"questions", "warnings", "cautions", "words", "refusals", "sources"}) {
            for (const auto &[slug, text] : (*subject)[group].map())
                all["bench_" + std::string(group)].member(slug) = text;
        }
    }
    Texts texts;
    texts.m_root = std::move(all);
    return texts;
}

std::string Texts::at(std::string_view group, std::string_view slug, std::string_view part) const
{
    const Value &item = m_root[group][slug];
    const auto text = part.empty() ? item.asString() : item[part].asString();
    return text.value_or(std::string(slug));
}

Texts Texts::withOwn(const OwnChoices &choices) const
{
    Texts texts = *this;
    Value &points = texts.m_root.member("points");
    for (const OwnPoint &own : choices.added) {
        Value::Map grades;
        for (int grade = 1; grade <= 5; ++grade)
            grades[std::to_string(grade)] = word("own", "grade_" + std::to_string(grade));
        points.member(own.slug) = Value::Map{{"title", own.title},
                                             {"look", own.look.empty() ? word("own", "look") : own.look},
                                             {"pass", own.pass.empty() ? word("own", "pass") : own.pass},
                                             {"grades", grades}};
        for (const OwnReading &reading : own.readings)
            texts.m_root.member("readings").member(reading.spec.slug) = reading.title;
    }
    return texts;
}

PointText Texts::point(std::string_view slug) const
{
    const std::string_view first = firstLook(slug);
    if (first != slug && !knows(slug) && knows(first)) {
        PointText text = point(first);
        text.title = phrase("point_again", {text.title});
        return text;
    }
    return {at("points", slug, "title"), at("points", slug, "look"), at("points", slug, "pass")};
}

std::string Texts::grade(std::string_view point, int grade) const
{
    const std::string_view slug = knows(point) ? point : firstLook(point);
    const auto text = m_root["points"][slug]["grades"][std::to_string(grade)].asString();
    return text.value_or(std::to_string(grade));
}

std::string Texts::word(std::string_view group, std::string_view slug) const { return at(group, slug, ""); }
std::string Texts::standName(std::string_view slug) const { return at("stands", slug, "name"); }
std::string Texts::standInstruction(std::string_view slug) const { return at("stands", slug, "instruction"); }
std::string Texts::kindName(std::string_view slug) const { return at("kinds", slug, "name"); }
std::string Texts::kindAbout(std::string_view slug) const { return at("kinds", slug, "about"); }
std::string Texts::cautionShort(std::string_view code) const { return at("cautions", code, "short"); }
std::string Texts::cautionFull(std::string_view code) const { return at("cautions", code, "full"); }
std::string Texts::phrase(std::string_view slug, const std::vector<std::string> &arguments) const
{
    std::string out = at("phrases", slug, "");
    // from the last to the first, so that an argument holding "%1" is left alone by the ones after it
    for (std::size_t i = arguments.size(); i > 0; --i)
        out = replaceAll(std::move(out), "%" + std::to_string(i), arguments[i - 1]);
    return out;
}

std::string Texts::benchWord(std::string_view question, std::string_view slug, std::string_view group) const
{
    const Value &words = m_root["bench_questions"][question];
    const auto text = group.empty() ? words[slug].asString() : words[group][slug].asString();
    return text.value_or(std::string(slug));
}

std::string Texts::benchSources(std::string_view sources) const
{
    std::vector<std::string> told;
    for (const std::string_view part : split(sources, ';')) {
        const std::string_view source = trim(part);
        if (!source.empty() && source != "CP")
            told.push_back(word("bench_sources", source));
    }
    return join(told, "; ");
}

std::string Texts::text(std::string_view slug) const
{
    return m_root[slug].asString().value_or(std::string(slug));
}

} // namespace snugwalk
