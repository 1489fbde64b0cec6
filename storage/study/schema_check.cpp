// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/schema_check.h"

#include "storage/sheet/run_columns.h"
#include "storage/study/query.h"
#include "storage/study/schema.h"

#include <SQLiteCpp/Database.h>

#include <map>
#include <mutex>
#include <set>
#include <string>
#include <tuple>
#include <utility>

namespace bothways::storage {
namespace {

using core::message;
using core::Message;

/// Type and name of an object, both as they stand there.
using ObjectName = std::pair<std::string, std::string>;
struct Object {
    std::string table;
    std::string sql;
    std::int64_t root = 0;
    bool plain = true; ///< each column has the type that SQLite gives it
    [[nodiscard]] bool operator==(const Object& other) const
    {
        return table == other.table && sql == other.sql && plain == other.plain;
    }
};
using Objects = std::map<ObjectName, Object>;

/// More than any version has; a file with a million tables is not read to its end.
constexpr std::size_t kMostObjects = 200;

/// What the file says; stops where it is too much. What is there twice is in `twice`.
Objects objectsOf(SQLite::Database& database, std::optional<ObjectName>& twice)
{
    Objects objects;
    Query rows(database, "SELECT type, name, tbl_name, sql, rootpage FROM sqlite_schema");
    while (rows.step() && objects.size() < kMostObjects) {
        Object object{rows.text(2), rows.text(3), rows.integer(4), true};
        object.plain = rows.isText(0) && rows.isText(1) && rows.isText(2) &&
                       (rows.isText(3) || rows.isNull(3)) && rows.isInteger(4);
        ObjectName name{rows.text(0), rows.text(1)};
        if (!objects.emplace(name, std::move(object)).second)
            twice = std::move(name);
    }
    return objects;
}

/// What this program makes; each version's is made when it is first asked for.
const Objects& ownObjects(int version)
{
    static std::mutex mutex;
    static std::map<int, Objects> made;
    const std::lock_guard lock(mutex);
    if (!made.contains(version)) {
        SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        createSchema(database, version);
        std::optional<ObjectName> twice;
        made.emplace(version, objectsOf(database, twice));
    }
    return made.at(version);
}

Message more(const ObjectName& name)
{
    const auto& [type, word] = name;
    const Message shown = inQuotes(word);
    if (type == "trigger")
        return message("holds a trigger that Bothways did not make ({}); it is left as it is"_t,
                       shown);
    if (type == "view")
        return message("holds a view that Bothways did not make ({}); it is left as it is"_t,
                       shown);
    if (type == "index")
        return message("holds an index that Bothways did not make ({}); it is left as it is"_t,
                       shown);
    if (type == "table")
        return message("holds a table that Bothways did not make ({}); it is left as it is"_t,
                       shown);
    return message("holds something that Bothways did not make ({}); it is left as it is"_t, shown);
}

/// Each table and index has pages of its own, a view has none.
bool rootsAreSane(const Objects& objects)
{
    std::set<std::int64_t> roots;
    for (const auto& [name, object] : objects) {
        const bool hasPages = name.first == "table" || name.first == "index";
        if (hasPages ? object.root < 2 || !roots.insert(object.root).second : object.root != 0)
            return false;
    }
    return true;
}

} // namespace

std::optional<Message> foreignSchema(SQLite::Database& database, int version)
{
    const Objects& ours = ownObjects(version);
    std::optional<ObjectName> twice;
    const Objects found = objectsOf(database, twice);
    for (const auto& [name, object] : found)
        if (!ours.contains(name))
            return more(name);
    for (const auto& [name, object] : ours) {
        const auto at = found.find(name);
        if (at == found.end())
            return message("is damaged: {} is missing in it; restore it from a copy"_t,
                           inQuotes(name.second));
        if (!(at->second == object))
            return message("holds {} in another form than Bothways made it; it is left as it "
                           "is"_t,
                           inQuotes(name.second));
    }
    if (twice)
        return message("is damaged: {} is twice in it; restore it from a copy"_t,
                       inQuotes(twice->second));
    if (!rootsAreSane(found))
        return "is damaged: its tables share pages; restore it from a copy"_t;
    return std::nullopt;
}

} // namespace bothways::storage
