api-fault = That is too much for me: something broke on our side and is in the log. Say it another way.
