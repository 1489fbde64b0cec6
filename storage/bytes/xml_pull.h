// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// A pull parser for the XML that GPX files are made of (XML 1.0, UTF-8; namespaces by dropping
/// prefixes; document types, comments and instructions are passed over, entities of a document
/// type are not expanded). It reads in pieces, holds one element at a time and trusts nothing:
/// names, texts, attributes and depth have limits.
namespace bothways::storage {

class XmlPull {
public:
    /// @param read  fills the buffer and says how many bytes it got; 0 at the end
    using Read = std::function<std::size_t(char* buffer, std::size_t size)>;
    explicit XmlPull(Read read);

    enum class Event { start, end, text, finished, broken };
    /// The next one. After `finished` or `broken` it stays so.
    Event next();

    /// Of a start or end: the name without its prefix.
    [[nodiscard]] const std::string& name() const { return m_name; }
    /// Of a start.
    [[nodiscard]] std::optional<std::string_view> attribute(std::string_view name) const;
    /// Of a text, entities replaced. Blanks between elements are texts too. Long texts come in
    /// pieces.
    [[nodiscard]] const std::string& text() const { return m_text; }
    [[nodiscard]] std::int64_t line() const { return m_line; }
    [[nodiscard]] std::size_t depth() const { return m_open.size(); }
    /// What is wrong, after `broken`.
    [[nodiscard]] const core::Message& fault() const { return m_fault; }

private:
    int peek();
    int get();
    bool takeText(std::string_view text);
    bool skipPast(std::string_view end);
    Event broken(core::Message fault);
    Event readText();
    Event readMarkup();
    Event readDeclaration();
    Event readCdata();
    Event readEnd();
    Event readStart();
    bool readName(std::string& name);
    bool readAttribute();
    bool readReference(std::string& into);
    void skipBlanks();

    Read m_read;
    std::vector<char> m_buffer;
    std::size_t m_at = 0, m_size = 0;
    bool m_sourceEnded = false;
    std::int64_t m_line = 1;
    std::string m_name, m_text;
    core::Message m_fault;
    std::vector<std::pair<std::string, std::string>> m_attributes;
    std::vector<std::string> m_open; ///< names of the elements that are not yet closed
    bool m_closeNext = false;        ///< the last start was an empty element
    bool m_rootSeen = false;
    std::optional<Event> m_final;
};

} // namespace bothways::storage
