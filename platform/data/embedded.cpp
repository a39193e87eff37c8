// SPDX-License-Identifier: Apache-2.0
// From compiled-in bytes to the catalogue.
#include "data/embedded.hpp"

#include "data/embedded_files.hpp"

namespace snugwalk {
namespace {

Catalogue loadProduct()
{
    std::vector<std::string_view> points;
    for (const auto &[path, bytes] : embeddedFiles()) {
        if (path.starts_with("points/"))
            points.push_back(bytes);
    }
    Result<Catalogue> catalogue =
        Catalogue::load(points, embeddedFiles().at("sets.json"), embeddedFiles().at("sources.json"));
    SNUG_ASSERT(catalogue.has_value());
    return std::move(catalogue).value();
}

} // namespace

const Catalogue &productCatalogue()
{
    static const Catalogue catalogue = loadProduct();
    return catalogue;
}

Result<Texts> productTexts(std::string_view language)
{
    const std::string path = "texts/" + std::string(language) + ".json";
    const auto found = embeddedFiles().find(path);
    if (found != embeddedFiles().end())
        return Texts::load(found->second);
    return Error{Errc::NotFound, "no words in \"" + std::string(language) + "\"", "language", "use en or es"};
}

std::vector<std::string> productLanguages() { return {"en", "es"}; }

} // namespace snugwalk
