// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <cstddef>
#include <cstdint>
#include <deque>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

struct XML_ParserStruct;

/// Expat, asked for one event after the other: XML 1.0 in UTF-8, UTF-16 or ISO 8859-1, namespaces
/// by dropping prefixes. Document types, comments and instructions are passed over; entities of a
/// document type stay as they are written (in attributes they are replaced, and expat bounds what
/// that adds). It reads in pieces and trusts nothing: names, values,
/// attributes and depth have limits, and so has what is held at a time.
namespace bothways::storage {

class XmlPull {
public:
    /// @param read  fills the buffer and says how many bytes it got; 0 at the end
    using Read = std::function<std::size_t(char* buffer, std::size_t size)>;
    explicit XmlPull(Read read);
    ~XmlPull();
    XmlPull(const XmlPull&) = delete;
    XmlPull& operator=(const XmlPull&) = delete;

    enum class Event { start, end, text, finished, broken };
    /// The next one. After `finished` or `broken` it stays so.
    Event next();

    /// Of a start or end: the name without its prefix.
    [[nodiscard]] const std::string& name() const { return m_now.text; }
    /// Of a start.
    [[nodiscard]] std::optional<std::string_view> attribute(std::string_view name) const;
    /// Of a text, entities replaced. Blanks between elements are texts too. Long texts come in
    /// pieces.
    [[nodiscard]] const std::string& text() const { return m_now.text; }
    /// On which the event begins.
    [[nodiscard]] std::int64_t line() const { return m_now.line; }
    /// How many elements are open; with the one that starts, without the one that ends.
    [[nodiscard]] std::size_t depth() const { return m_now.depth; }
    /// What is wrong, after `broken`.
    [[nodiscard]] const core::Message& fault() const { return m_fault; }

private:
    struct Item {
        Event event = Event::text;
        std::string text; ///< the text, or the name
        std::vector<std::pair<std::string, std::string>> attributes;
        std::int64_t line = 1;
        std::size_t depth = 0;
    };
    struct Free {
        void operator()(XML_ParserStruct* parser) const;
    };
    friend struct XmlHandlers;

    void feed();
    void give(Event event, std::string text);
    void refuse(core::Message fault);
    [[nodiscard]] core::Message faultOfParser() const;

    Read m_read;
    std::unique_ptr<XML_ParserStruct, Free> m_parser;
    std::int64_t m_fed = 0; ///< bytes
    std::deque<Item> m_ready;
    Item m_now;
    std::vector<std::string> m_open; ///< names of the elements that are not yet closed
    bool m_newText = true;           ///< the next text does not go on with the last
    bool m_ended = false;            ///< nothing will be added to m_ready
    core::Message m_fault;
};

} // namespace bothways::storage
