// SPDX-License-Identifier: Apache-2.0
// One file to hand over (mail, stick, nearby share) as a store.
#pragma once

#include <memory>
#include <string>

#include "sync/bundle_format.hpp"
#include "sync/store.hpp"

namespace snugwalk {

/// What is published waits beside the bundle until `finish` writes the whole file anew and gives it its
/// name in one step; without `finish` the file stays as it was. Not for two writers at a time.
class BundleStore final : public Store {
public:
    /// A file that is not there yet is an empty bundle.
    /// \returns `Corrupt` or `OutOfRange` (see core/sync/bundle_format.hpp), `Io`.
    [[nodiscard]] static Result<std::unique_ptr<BundleStore>> open(const std::string &file);
    ~BundleStore() override;

    [[nodiscard]] Result<std::vector<StoreFile>> list(std::string_view folder) override;
    /// `Corrupt` when the bytes are not those of the index.
    [[nodiscard]] Result<std::string> read(std::string_view name, std::int64_t limit) override;
    [[nodiscard]] Status publish(std::string_view name, std::string_view bytes) override;

    /// Writes what was published since opening, if anything. On an error the old file stands.
    [[nodiscard]] Status finish();

private:
    struct Spool;
    explicit BundleStore(std::string file);
    [[nodiscard]] Status readIndex();
    [[nodiscard]] Status writeWhole(const std::string &part);

    std::string m_file;
    bool m_isThere = false;         ///< the file, when it was opened or finished
    BundleIndex m_old;              ///< in the file
    BundleIndex m_new;              ///< in the spool
    std::unique_ptr<Spool> m_spool; ///< bytes published since opening
};

} // namespace snugwalk
