// SPDX-License-Identifier: Apache-2.0
// From compiled-in bytes to the catalogue.
#include "data/embedded.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "base/value.hpp"
#include "data/embedded_files.hpp"

namespace snugwalk {
namespace {

std::vector<std::string_view> filesUnder(std::string_view folder)
{
    std::vector<std::string_view> files;
    for (const auto &[path, bytes] : embeddedFiles()) {
        if (path.starts_with(folder))
            files.push_back(bytes);
    }
    return files;
}

Catalogue loadProduct()
{
    Result<Catalogue> catalogue =
        Catalogue::load(filesUnder("points/"), embeddedFiles().at("sets.json"),
                        embeddedFiles().at("sources.json"), embeddedFiles().at("holds.json"));
    SNUG_ASSERT(catalogue.has_value());
    return std::move(catalogue).value();
}

} // namespace

const Catalogue &productCatalogue()
{
    static const Catalogue catalogue = loadProduct();
    return catalogue;
}

const SupplyList &productSupplies()
{
    static const SupplyList list = [] {
        Result<SupplyList> loaded = SupplyList::load(embeddedFiles().at("supplies.json"));
        SNUG_ASSERT(loaded.has_value());
        return std::move(loaded).value();
    }();
    return list;
}

Result<Texts> productTexts(std::string_view language)
{
    const std::string folder = "texts/" + std::string(language);
    const auto found = embeddedFiles().find(folder + ".json");
    if (found != embeddedFiles().end())
        return Texts::load(found->second, filesUnder(folder + "/"),
                           filesUnder("texts/bench/" + std::string(language) + "/"));
    std::vector<std::string> known;
    for (const Language &one : productLanguages())
        known.push_back(one.slug);
    return Error{Errc::NotFound, "no words in \"" + std::string(language) + "\"", "language",
                 "use one of " + join(known, ", ")};
}

const std::vector<Language> &productLanguages()
{
    static const std::vector<Language> languages = [] {
        const Result<Value> names = parseJson(embeddedFiles().at("languages.json"));
        SNUG_ASSERT(names.has_value());
        std::vector<Language> all;
        for (const auto &[slug, name] : names->map())
            all.push_back({slug, *name.asString()});
        return all;
    }();
    return languages;
}

bool isProductLanguage(std::string_view slug)
{
    return std::ranges::any_of(productLanguages(), [&](const Language &one) { return one.slug == slug; });
}

} // namespace snugwalk
