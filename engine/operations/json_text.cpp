#include "operations/json_text.h"

#include "values/shortest_decimal.h"

#include <boost/json.hpp>

namespace amentum {
namespace {

struct Writer {
    Layout layout;
    std::string text;

    void new_line(int depth) {
        if (layout == Layout::compact)
            return;
        text += '\n';
        text.append(static_cast<std::size_t>(2 * depth), ' ');
    }

    void quoted(std::string_view string) {
        text += boost::json::serialize(boost::json::string_view(string.data(), string.size()));
    }

    void object(const boost::json::object& members, int depth) {
        text += '{';
        bool first = true;
        for (const auto& member : members) {
            if (!first)
                text += ',';
            first = false;
            new_line(depth + 1);
            quoted(std::string_view(member.key().data(), member.key().size()));
            text += layout == Layout::compact ? ":" : ": ";
            value(member.value(), depth + 1);
        }
        if (!members.empty())
            new_line(depth);
        text += '}';
    }

    void array(const boost::json::array& items, int depth) {
        text += '[';
        bool first = true;
        for (const auto& item : items) {
            if (!first)
                text += ',';
            first = false;
            new_line(depth + 1);
            value(item, depth + 1);
        }
        if (!items.empty())
            new_line(depth);
        text += ']';
    }

    void value(const boost::json::value& any, int depth) {
        switch (any.kind()) {
        case boost::json::kind::object:
            return object(any.get_object(), depth);
        case boost::json::kind::array:
            return array(any.get_array(), depth);
        case boost::json::kind::string:
            return quoted(std::string_view(any.get_string().data(), any.get_string().size()));
        case boost::json::kind::double_:
            text += format_shortest(any.get_double());
            return;
        case boost::json::kind::bool_:
            text += any.get_bool() ? "true" : "false";
            return;
        case boost::json::kind::int64:
            text += std::to_string(any.get_int64());
            return;
        case boost::json::kind::uint64:
            text += std::to_string(any.get_uint64());
            return;
        case boost::json::kind::null:
            text += "null";
            return;
        }
    }
};

} // namespace

std::string json_text(const boost::json::value& value, Layout layout) {
    Writer writer{layout, {}};
    writer.value(value, 0);
    return writer.text;
}

} // namespace amentum
