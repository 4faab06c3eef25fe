### What Spain says in other words than content/words/es/verdict.ftl, by the trade's terms; its numbers have a decimal comma.

verdict-native-here = Autóctono de { $place }: vea que sea este árbol y pregunte por qué tiene que irse.
verdict-native-parts = Autóctono de partes de { $land }: vea que sea este árbol y pregunte por qué tiene que irse.
verdict-native-ask = No se sabe bien si es autóctono de { $land }: pregunte allá.
verdict-native-elsewhere = Autóctono de otras partes de { $land }, no de { $place }.
verdict-native-not = No es autóctono de { $land }.
