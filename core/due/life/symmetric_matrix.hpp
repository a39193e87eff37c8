// SPDX-License-Identifier: Apache-2.0
// Small symmetric matrices: their Cholesky factor, solutions and inverse.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace snugwalk {

/// The lower triangle, row after row.
class SymmetricMatrix {
public:
    explicit SymmetricMatrix(std::size_t size) : m_size(size), m_cells(size * (size + 1) / 2, 0.0) {}
    [[nodiscard]] std::size_t size() const { return m_size; }
    /// row >= column
    double &operator()(std::size_t row, std::size_t column) { return m_cells[at(row, column)]; }
    double operator()(std::size_t row, std::size_t column) const { return m_cells[at(row, column)]; }

private:
    static std::size_t at(std::size_t row, std::size_t column) { return row * (row + 1) / 2 + column; }
    std::size_t m_size;
    std::vector<double> m_cells;
};

class CholeskyFactor {
public:
    /// Nothing when the matrix is not positive definite, or so near singular that 1e-11 of a diagonal
    /// member is left of it.
    [[nodiscard]] static std::optional<CholeskyFactor> of(const SymmetricMatrix &matrix);
    [[nodiscard]] std::vector<double> solve(std::span<const double> right) const;
    /// Full, row after row.
    [[nodiscard]] std::vector<double> inverse() const;

private:
    explicit CholeskyFactor(SymmetricMatrix lower) : m_lower(std::move(lower)) {}
    SymmetricMatrix m_lower;
};

} // namespace snugwalk
