// SPDX-License-Identifier: Apache-2.0
// From compiled-in bytes to the catalogue.
#include "data/embedded.hpp"

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
    return Error{Errc::NotFound, "no words in \"" + std::string(language) + "\"", "language", "use en or es"};
}

std::vector<std::string> productLanguages() { return {"en", "es"}; }

} // namespace snugwalk
